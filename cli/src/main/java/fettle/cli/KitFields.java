package fettle.cli;

import org.jspecify.annotations.Nullable;

/** The options that describe one kind of kit. */
interface KitFields<T> {
    /** A new item of this name, with the options given. */
    T made(String name);

    /** An item with the options given put in place of what it had. */
    T changed(T present, String name);

    /** What was given, or what was there where nothing was given. */
    static String or(@Nullable String given, String present) {
        return given == null ? present : given;
    }
}
