package fettle.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/**
 * What the command line takes from outside its arguments.
 *
 * @param clock the time and the zone dates are shown in
 * @param environment environment variables
 * @param home the user's home folder
 * @param actor who makes the changes, for the journal
 * @param untilStopped returns when the user wants a serving desk to end
 */
record Surroundings(Clock clock, Map<String, String> environment, Path home, String actor, Runnable untilStopped) {
    Surroundings {
        environment = Map.copyOf(environment);
    }

    /** Those of this process. */
    static Surroundings ofProcess(Runnable untilStopped) {
        return new Surroundings(
                Clock.systemDefaultZone(),
                System.getenv(),
                Path.of(System.getProperty("user.home")),
                System.getProperty("user.name"),
                untilStopped);
    }

    /**
     * The data folder where none is given on the command line: {@code FETTLE_BOOK}, else {@code fettle} under
     * {@code XDG_DATA_HOME}, else {@code ~/.local/share/fettle} (XDG Base Directory Specification 0.8).
     */
    Path bookFolder() {
        String named = environment.getOrDefault("FETTLE_BOOK", "");
        if (!named.isBlank()) {
            return Path.of(named);
        }
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        return (data.isBlank() ? home.resolve(".local").resolve("share") : Path.of(data)).resolve("fettle");
    }
}
