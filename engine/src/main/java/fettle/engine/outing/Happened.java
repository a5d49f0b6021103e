package fettle.engine.outing;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of a planned run or charge.
 *
 * @param kind run or charge
 * @param subject name of the run, or of the way of charging
 * @param packs tags of the packs
 * @param began when it began; {@code null} if only its end was noted
 * @param ended when it ended; {@code null} while it goes on
 * @param putBackCoulombs charge put back into each pack afterwards [C]; {@code null} until noted
 */
public record Happened(
        Kind kind,
        String subject,
        List<String> packs,
        @Nullable Instant began,
        @Nullable Instant ended,
        @Nullable Double putBackCoulombs) {
    public Happened {
        packs = List.copyOf(packs);
    }

    /** What happened. */
    public enum Kind {
        RUN,
        CHARGE
    }

    public boolean isOf(Kind other, String name) {
        return kind == other && subject.equalsIgnoreCase(name);
    }

    public Happened endedAt(Instant at) {
        return new Happened(kind, subject, packs, began, at, putBackCoulombs);
    }

    public Happened putBack(double coulombs) {
        return new Happened(kind, subject, packs, began, ended, coulombs);
    }
}
