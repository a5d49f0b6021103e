package fettle.engine.supply.receiver;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;

/**
 * What sets the voltage: a BEC, or nothing where a receiver pack feeds directly.
 *
 * @param kind how it works
 * @param inputVolts voltage before it, the battery's highest [V]
 * @param outputVolts voltage it holds [V]; for a direct feed the pack's under light load
 * @param sourceOhms inner resistance of the source at the output [Ω]; 0 for a regulator within its limits
 * @param continuousAmps what it may give for ever [A]
 * @param peakAmps what it may give for seconds [A]
 */
public record Regulator(
        Kind kind, double inputVolts, double outputVolts, double sourceOhms, double continuousAmps, double peakAmps) {
    /** How a regulator works. */
    public enum Kind {
        LINEAR,
        SWITCHING,
        DIRECT
    }

    /** Usual efficiency of a switching BEC; from memory. */
    private static final double SWITCHING_EFFICIENCY = 0.85;

    public Regulator {
        Faults faults = new Faults();
        faults.range("inputVolts", "voltage before the BEC", inputVolts, TradeUnit.VOLT, 2, 70, "Full battery.");
        faults.range("outputVolts", "voltage of the BEC", outputVolts, TradeUnit.VOLT, 2, 16, "See its label.");
        faults.range("sourceOhms", "source resistance", sourceOhms, TradeUnit.MILLIOHM, 0, 5000, "Measure the pack.");
        faults.range("continuousAmps", "continuous current", continuousAmps, TradeUnit.AMPERE, 0.05, 200, "See label.");
        faults.range("peakAmps", "peak current", peakAmps, TradeUnit.AMPERE, 0.05, 400, "See its label.");
        if (peakAmps < continuousAmps) {
            faults.add("peakAmps", "peak current is below the continuous one; check that they are not swapped.");
        }
        if (kind != Kind.DIRECT && inputVolts < outputVolts) {
            throw new InputException(
                    "inputVolts",
                    "a BEC cannot give " + TradeUnit.VOLT.print(outputVolts, 1) + " out of "
                            + TradeUnit.VOLT.print(inputVolts, 1) + ". Check the two voltages.");
        }
        faults.refuse();
    }

    /** Heat at a current [W]: (in − out)·I for a linear one. */
    public double heatWatts(double amps) {
        return switch (kind) {
            case LINEAR -> (inputVolts - outputVolts) * amps;
            case SWITCHING -> outputVolts * amps * (1 / SWITCHING_EFFICIENCY - 1);
            case DIRECT -> 0;
        };
    }

    /** Output at a current [V]. */
    double volts(double amps) {
        return outputVolts - amps * sourceOhms;
    }

    Regulator stronger(double factor) {
        return new Regulator(
                kind, inputVolts, outputVolts, sourceOhms / factor, continuousAmps * factor, peakAmps * factor);
    }
}
