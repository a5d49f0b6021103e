package fettle.workshop;

import fettle.engine.pack.Check;
import fettle.engine.pack.PackHistory;
import fettle.engine.units.TradeUnit;
import java.util.Comparator;

/** Resistance of a pack's cells as its record knows it. */
public final class CellOhms {
    /** Resistance of a cell that was never measured: 15 mΩ for 1 Ah, less for more. From memory. */
    private static final double USUAL_OHM_AMP_HOURS = 0.015;

    private CellOhms() {}

    /** Mean of the latest readings [Ω]; the usual for its size where none was taken. */
    public static double of(PackHistory history) {
        return history.checks().stream()
                .sorted(Comparator.comparing(Check::takenAt).reversed())
                .map(Check::cellResistanceOhms)
                .filter(readings -> !readings.isEmpty())
                .findFirst()
                .map(readings -> readings.stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .orElse(USUAL_OHM_AMP_HOURS
                        / TradeUnit.AMPERE_HOUR.fromSi(history.pack().ratedCapacityCoulombs()));
    }
}
