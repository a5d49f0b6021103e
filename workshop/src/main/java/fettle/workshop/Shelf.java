package fettle.workshop;

import java.util.List;

/** One kind of kit: packs, craft, chargers or sources. Every change is journalled and can be undone. */
public final class Shelf<T> {
    /** All of it, retired included, by name. */
    public List<Registered<T>> list() {
        throw new UnsupportedOperationException();
    }

    /** The item of that name; throws {@link UnknownNameException} where there is none. */
    public Registered<T> find(String name) {
        throw new UnsupportedOperationException();
    }

    public JournalEntry add(T item) {
        throw new UnsupportedOperationException();
    }

    /** Replaces the item of that name; its name may change too, and its history follows. */
    public JournalEntry edit(String name, T item) {
        throw new UnsupportedOperationException();
    }

    public JournalEntry retire(String name, String reason) {
        throw new UnsupportedOperationException();
    }

    public JournalEntry restore(String name) {
        throw new UnsupportedOperationException();
    }
}
