package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;
import fettle.engine.cell.circuit.Resistances;

/**
 * A cell's circuit over its whole charge, put together from windows of its log.
 *
 * <p>Formula: V = ocv(z) − k(T)·(R0(z)·i + R1(z)·x1 + R2(z)·x2), x the current smoothed with each time constant, k the factor
 * of the temperature law, all with volts later than amps by the sensor delay.
 *
 * @param rest rest volts against charge
 * @param capacityCoulombs charge from empty to full [C]
 * @param resistances R0, R1, R2 at 25 °C against charge
 * @param firstSeconds time constant of the quicker pair [s]
 * @param secondSeconds time constant of the slower pair [s]
 * @param law how resistances depend on temperature
 * @param delaySeconds how much later volts are logged than amps [s]
 */
public record IdentifiedCell(
        RestCurve rest,
        double capacityCoulombs,
        Resistances resistances,
        double firstSeconds,
        double secondSeconds,
        TemperatureLaw law,
        double delaySeconds) {

    /** A cell whose resistances do not depend on charge: one window's circuit, with the usual temperature law. */
    public static IdentifiedCell of(CellBelief belief, IdentifiedCircuit circuit) {
        TemperatureLaw law = TemperatureLaw.USUAL;
        double factor = law.factor(circuit.kelvins());
        IdentifiedPair first = circuit.pairs().get(0);
        IdentifiedPair last = circuit.pairs().get(circuit.pairs().size() - 1);
        double second = circuit.pairs().size() > 1 ? last.ohms().value() : 0;
        return new IdentifiedCell(
                belief.curve(),
                belief.capacityCoulombs().value(),
                Resistances.constant(circuit.r0().value() / factor, first.ohms().value() / factor, second / factor),
                first.seconds().value(),
                last.seconds().value(),
                law,
                circuit.delaySeconds().value());
    }

    /**
     * Volts of the cell under a logged current [V].
     *
     * @param window time and current; its volts are not looked at
     * @param kelvins temperature of the cell at each row [K]
     * @param startCharge charge at the first row, fraction
     */
    public double[] volts(LoadWindow window, double[] kelvins, double startCharge) {
        double[] amps = window.ampsDelayed(delaySeconds);
        double[] first = Polarisation.of(window, amps, firstSeconds);
        double[] second = Polarisation.of(window, amps, secondSeconds);
        double[] volts = new CircuitModel(window, rest).counted(amps);
        for (int row = 0; row < volts.length; row++) {
            double charge = startCharge - volts[row] / capacityCoulombs;
            double drop = resistances.ohms(0, charge) * amps[row]
                    + resistances.ohms(1, charge) * first[row]
                    + resistances.ohms(2, charge) * second[row];
            volts[row] = rest.volts(charge) - law.factor(kelvins[row]) * drop;
        }
        return volts;
    }

    /** The same cell read by another logger: with the delay its steps show. */
    public IdentifiedCell readBy(LoadWindow log) {
        return new IdentifiedCell(
                rest, capacityCoulombs, resistances, firstSeconds, secondSeconds, law, SensorDelay.of(log));
    }
}
