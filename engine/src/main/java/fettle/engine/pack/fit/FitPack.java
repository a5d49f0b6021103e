package fettle.engine.pack.fit;

import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.units.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * A pack as the fit looks at it.
 *
 * @param pack as registered
 * @param standing its state
 * @param capacityCoulombs what it holds today [C]
 * @param reserveFraction share of that to keep back, 0 … 1
 * @param packOhms resistance of the whole pack [Ω], &gt; 0
 * @param sustainableAmps largest current from full to reserve within every limit [A], with ±
 * @param ageYears since it was bought; {@code null} if not known
 */
public record FitPack(
        Pack pack,
        Standing standing,
        double capacityCoulombs,
        double reserveFraction,
        double packOhms,
        Estimate sustainableAmps,
        @Nullable Double ageYears) {
    private static final double DEVIATIONS = 2;

    String tag() {
        return pack.tag();
    }

    double usableCoulombs() {
        return (1 - reserveFraction) * capacityCoulombs;
    }

    /** The current it carries with two standard deviations to spare [A]; never above its label. */
    double surelyAmps() {
        double sure = Math.max(0, sustainableAmps.value() - DEVIATIONS * sustainableAmps.standardDeviation());
        Double label = pack.dischargeRatingAmps();
        return label == null ? sure : Math.min(sure, label);
    }
}
