package fettle.engine.health.identification;

import fettle.engine.units.Estimate;
import java.util.List;

/**
 * What a window of a log says of its cell, at the cell's own temperature.
 *
 * @param r0 series resistance [Ω]
 * @param pairs resistor-capacitor pairs, quickest first; a wide ± and a doubt where the data cannot tell
 * @param startCharge charge at the first row, fraction
 * @param capacityCoulombs charge from empty to full [C]; little more than the belief unless much charge moved
 * @param delaySeconds how much later volts are logged than amps [s]
 * @param kelvins mean temperature of the cell [K]
 * @param rmsVolts root mean square of what the circuit leaves unexplained [V]
 * @param rows rows of the window
 * @param effectiveSamples independent readings those rows are worth
 * @param spikes rows left out as spikes
 * @param doubts what the data cannot tell, and why, in sentences
 */
public record IdentifiedCircuit(
        Estimate r0,
        List<IdentifiedPair> pairs,
        Estimate startCharge,
        Estimate capacityCoulombs,
        Estimate delaySeconds,
        double kelvins,
        double rmsVolts,
        int rows,
        double effectiveSamples,
        int spikes,
        List<String> doubts) {
    public IdentifiedCircuit {
        pairs = List.copyOf(pairs);
        doubts = List.copyOf(doubts);
    }

    /** The same, read from more rows than the averages it was found in. */
    IdentifiedCircuit readFrom(int allRows, Estimate delay) {
        return new IdentifiedCircuit(
                r0,
                pairs,
                startCharge,
                capacityCoulombs,
                delay,
                kelvins,
                rmsVolts,
                allRows,
                effectiveSamples,
                spikes,
                doubts);
    }

    /** Voltage drop per ampere so long after a step of current [Ω], charge taken out left aside. */
    public double stepOhms(double secondsAfter) {
        double sum = r0.value();
        for (IdentifiedPair pair : pairs) {
            sum += pair.ohms().value()
                    * -Math.expm1(-secondsAfter / pair.seconds().value());
        }
        return sum;
    }
}
