package fettle.engine.pack.fit;

import fettle.engine.pack.Standing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pack, or two joined, that suits a craft.
 *
 * @param tags its packs
 * @param joining how they are joined
 * @param standing the worst of theirs
 * @param capacityCoulombs what the set gives down to where the first of its packs is at its reserve [C]
 * @param surelyAmps current it carries with two standard deviations to spare [A]
 * @param seconds how long that lasts at the craft's typical current [s]; {@code null} if that is not known
 * @param kilograms mass [kg]; {@code null} if a pack was not weighed
 * @param ageYears age of the oldest; {@code null} if not known
 * @param reasons what speaks for it, with figures
 * @param doubts what to mind
 */
public record Fit(
        List<String> tags,
        Joining joining,
        Standing standing,
        double capacityCoulombs,
        double surelyAmps,
        @Nullable Double seconds,
        @Nullable Double kilograms,
        @Nullable Double ageYears,
        List<String> reasons,
        List<String> doubts) {
    public Fit {
        tags = List.copyOf(tags);
        reasons = List.copyOf(reasons);
        doubts = List.copyOf(doubts);
    }

    /** How the packs of a set are joined. */
    public enum Joining {
        ALONE("alone"),
        SERIES("in series"),
        PARALLEL("side by side");

        private final String label;

        Joining(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}
