package fettle.desk;

import java.time.Clock;
import org.jspecify.annotations.Nullable;

/**
 * How the desk is served.
 *
 * @param host address to listen on; the loopback unless a person asked otherwise
 * @param port TCP port, 0 … 65535; 0 takes any free one
 * @param clock gives now and the time zone of dates on pages
 * @param notice a line shown on top of every page, e.g. that the book is thrown away; {@code null} for none
 */
public record DeskOptions(
        String host, int port, Clock clock, @Nullable String notice) {
    public static final String LOOPBACK = "127.0.0.1";

    /** A desk on the loopback only. */
    public static DeskOptions onLoopback(int port, Clock clock, @Nullable String notice) {
        return new DeskOptions(LOOPBACK, port, clock, notice);
    }
}
