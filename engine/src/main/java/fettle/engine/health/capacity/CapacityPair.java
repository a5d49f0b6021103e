package fettle.engine.health.capacity;

import fettle.engine.units.Faults;
import java.time.Instant;

/**
 * One piece of evidence on capacity: a change of rest charge and the charge that made it, both positive when charging.
 *
 * <p>Random errors differ from pair to pair and average out; systematic ones (the curve, the counter's gain) are the same
 * every time and do not.
 *
 * @param at when it was complete
 * @param changeFraction change of rest charge, −1.2 … 1.2, not 0
 * @param changeDeviation its random error, one standard deviation, &gt; 0
 * @param curveDeviation its error from the rest-voltage curve, one standard deviation, ≥ 0
 * @param coulombs charge counted or noted [C]
 * @param coulombsDeviation its random error [C], one standard deviation, &gt; 0
 * @param how where it comes from, in words
 */
public record CapacityPair(
        Instant at,
        double changeFraction,
        double changeDeviation,
        double curveDeviation,
        double coulombs,
        double coulombsDeviation,
        String how) {
    private static final double LARGEST_CHANGE = 1.2;

    public CapacityPair {
        Faults faults = new Faults();
        boolean possible = Math.abs(changeFraction) > 0 && Math.abs(changeFraction) <= LARGEST_CHANGE;
        if (!possible) {
            faults.add(
                    "change",
                    "change of rest charge is " + changeFraction + "; expected more than 0 and at most "
                            + LARGEST_CHANGE + " either way. Take two rests with a charge or a run between them.");
        }
        if (!(changeDeviation > 0 && curveDeviation >= 0 && coulombsDeviation > 0)
                || !Double.isFinite(changeDeviation + curveDeviation + coulombsDeviation)) {
            faults.add("deviation", "a pair needs the standard deviation of both members, each more than 0.");
        }
        if (!Double.isFinite(coulombs) || coulombs * changeFraction <= 0) {
            faults.add(
                    "coulombs",
                    "charge counted is " + coulombs + " C for a change of rest charge of " + changeFraction
                            + "; expected both to go the same way. Check the sign of the current.");
        }
        faults.refuse();
    }
}
