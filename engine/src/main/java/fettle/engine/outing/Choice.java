package fettle.engine.outing;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something a person has settled; a plan keeps it.
 *
 * @param kind what is settled
 * @param subject the run or the charge it is about; empty for a pack
 * @param packs tags of the packs, if it names any
 * @param at when, if it names a time
 */
public record Choice(
        Kind kind,
        String subject,
        List<String> packs,
        @Nullable Instant at) {
    public Choice {
        packs = List.copyOf(packs);
    }

    /** What can be settled. */
    public enum Kind {
        RUN_PACKS("run with packs"),
        RUN_START("run at a time"),
        RUN_OUT("run left out"),
        PACK_OUT("pack left out"),
        CHARGE_START("charge at a time");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Whether both settle the same thing, so that one replaces the other. */
    public boolean sameMatter(Choice other) {
        boolean samePacks = kind != Kind.PACK_OUT || packs.equals(other.packs);
        return kind == other.kind && subject.equalsIgnoreCase(other.subject) && samePacks;
    }
}
