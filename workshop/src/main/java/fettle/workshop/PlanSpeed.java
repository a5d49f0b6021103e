package fettle.workshop;

import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;

/**
 * How long a plan is searched at most.
 *
 * @param seconds the time [s], 0.1 to 600
 */
public record PlanSpeed(double seconds) {
    /** Long enough for a realistic evening to be proven best. */
    public static final PlanSpeed USUAL = new PlanSpeed(10);

    private static final double LEAST = 0.1;
    private static final double MOST = 600;

    public PlanSpeed {
        if (!(seconds >= LEAST && seconds <= MOST)) {
            throw new InputException(
                    "seconds", "search time is " + seconds + " s; expected " + LEAST + " to " + MOST + " s.");
        }
    }

    /** As typed, e.g. {@code 10s}; the usual if nothing is. */
    public static PlanSpeed parse(String typed) {
        return typed.isBlank()
                ? USUAL
                : new PlanSpeed(QuantityText.si("seconds", "search time", typed, Measure.DURATION, TradeUnit.SECOND));
    }
}
