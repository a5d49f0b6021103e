package fettle.workshop.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that the scenario sets, so that the journal tells when each entry was made in the story. */
final class ScenarioClock extends Clock {
    private volatile Instant instant;

    ScenarioClock(Instant begin) {
        this.instant = begin;
    }

    void set(Instant next) {
        instant = next;
    }

    @Override
    public Instant instant() {
        return instant;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(instant, zone);
    }
}
