package fettle.workshop.entry;

import org.jspecify.annotations.Nullable;

/** Something a line may say once. Not thread-safe. */
final class Once<T> {
    private final String what;
    private @Nullable Word first;
    private @Nullable T value;

    Once(String what) {
        this.what = what;
    }

    /** Keeps the first; a second is a problem. Returns whether it was kept. */
    boolean put(Word word, T said, Remarks remarks) {
        Word earlier = first;
        if (earlier != null) {
            remarks.problem(word, what + " is given already, at column " + earlier.column() + ". Take one away.");
            return false;
        }
        first = word;
        value = said;
        return true;
    }

    @Nullable
    T value() {
        return value;
    }

    @Nullable
    Word word() {
        return first;
    }
}
