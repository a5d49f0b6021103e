package fettle.cli;

import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** The options that describe one kind of kit. */
interface KitFields<T> {
    /** A new item of this name, with the options given. */
    T made(String name);

    /** The same where times are written; {@code here} is the time zone of who writes them. */
    default T made(String name, ZoneId here) {
        return made(name);
    }

    /** An item with the options given put in place of what it had. */
    T changed(T present, String name);

    /** What was given, or what was there where nothing was given. */
    static String or(@Nullable String given, String present) {
        return given == null ? present : given;
    }
}
