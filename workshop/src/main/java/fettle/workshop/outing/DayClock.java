package fettle.workshop.outing;

import java.time.Duration;
import java.time.Instant;

/**
 * Whole minutes from the start of a problem. Minutes are real time, so a day with a clock change has 23 or 25 hours.
 *
 * @param from the instant of minute 0
 */
public record DayClock(Instant from) {
    /** Starts lie on multiples of this [min]. */
    static final int STEP_MINUTES = 5;

    private static final int SECONDS = 60;

    /** The clock of a plan from an instant on: minute 0 is the next multiple of the step of UTC. */
    static DayClock startingAt(Instant earliest) {
        long step = (long) STEP_MINUTES * SECONDS;
        return new DayClock(Instant.ofEpochSecond(Math.floorDiv(earliest.getEpochSecond() + step - 1, step) * step));
    }

    /** The first whole minute that is not before an instant. */
    int minuteNotBefore(Instant at) {
        return Math.toIntExact(-Math.floorDiv(-Duration.between(from, at).toSeconds(), SECONDS));
    }

    /** The last whole minute that is not after an instant. */
    int minuteNotAfter(Instant at) {
        return Math.toIntExact(Math.floorDiv(Duration.between(from, at).toSeconds(), SECONDS));
    }

    Instant at(int minute) {
        return from.plusSeconds((long) minute * SECONDS);
    }

    /** A time in whole minutes, never less than it is. */
    static int minutesUp(double seconds) {
        return (int) Math.ceil(seconds / SECONDS - 1e-9);
    }
}
