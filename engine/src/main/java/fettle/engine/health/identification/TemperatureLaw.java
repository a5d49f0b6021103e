package fettle.engine.health.identification;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.List;

/**
 * How a cell's resistance grows in the cold, from resistances of the same cell at several temperatures.
 *
 * <p>Formula: ln R = a + Ea/Rg · 1/T, a straight line for each charge, one slope for all. The ± of the slope never goes below
 * {@value #LEAST_DEVIATION} J/mol: whole cells bend away from a straight line by that much over 25 K.
 *
 * @param activationJoulesPerMole Ea [J/mol] with its ±
 */
public record TemperatureLaw(Estimate activationJoulesPerMole) {
    /** Half the spread over currents and charges between 0 and 25 °C of one measured cell (Kollmeyer 2018). */
    private static final double LEAST_DEVIATION = 1_500;

    /**
     * One resistance.
     *
     * @param group readings of one group share charge and current
     * @param kelvins temperature [K]
     * @param ohms resistance [Ω], &gt; 0
     */
    public record Reading(int group, double kelvins, double ohms) {}

    /** The law through readings; each group needs two temperatures or more to count. */
    public static TemperatureLaw through(List<Reading> readings) {
        double across = 0;
        double along = 0;
        int groups = (int) readings.stream().mapToInt(Reading::group).distinct().count();
        for (Reading reading : readings) {
            double inverse = 1 / reading.kelvins() - mean(readings, reading.group(), Axis.INVERSE_KELVINS);
            double logOhms = Math.log(reading.ohms()) - mean(readings, reading.group(), Axis.LOG_OHMS);
            across += inverse * inverse;
            along += inverse * logOhms;
        }
        if (!(across > 0)) {
            throw new InputException(
                    "temperature",
                    "all resistances are of one temperature. Log a run on a colder or warmer day as well.");
        }
        double slope = along / across;
        double squares = 0;
        for (Reading reading : readings) {
            double inverse = 1 / reading.kelvins() - mean(readings, reading.group(), Axis.INVERSE_KELVINS);
            double logOhms = Math.log(reading.ohms()) - mean(readings, reading.group(), Axis.LOG_OHMS);
            squares += (logOhms - slope * inverse) * (logOhms - slope * inverse);
        }
        int freedom = Math.max(1, readings.size() - groups - 1);
        double scatter = Arrhenius.GAS_CONSTANT * Math.sqrt(squares / freedom / across);
        return new TemperatureLaw(Estimate.ofIndependent(
                Arrhenius.GAS_CONSTANT * slope,
                List.of(
                        new Driver("scatter between charges", scatter),
                        new Driver("cells bend away from a straight line", LEAST_DEVIATION))));
    }

    /** The law itself. */
    public Arrhenius arrhenius() {
        return new Arrhenius(Math.max(0, activationJoulesPerMole.value()));
    }

    /** Resistance at another temperature, with what the law's ± adds. */
    public Estimate at(double kelvins, Estimate ohms, double ohmsKelvins) {
        double factor = arrhenius().factor(kelvins) / arrhenius().factor(ohmsKelvins);
        double value = ohms.value() * factor;
        double byLaw = value
                * activationJoulesPerMole.standardDeviation()
                / Arrhenius.GAS_CONSTANT
                * Math.abs(1 / kelvins - 1 / ohmsKelvins);
        return Estimate.ofIndependent(
                value,
                List.of(
                        new Driver("resistance at its own temperature", ohms.standardDeviation() * factor),
                        new Driver("temperature law", byLaw)));
    }

    private enum Axis {
        INVERSE_KELVINS,
        LOG_OHMS
    }

    private static double mean(List<Reading> readings, int group, Axis axis) {
        return readings.stream()
                .filter(reading -> reading.group() == group)
                .mapToDouble(reading -> axis == Axis.LOG_OHMS ? Math.log(reading.ohms()) : 1 / reading.kelvins())
                .average()
                .orElseThrow();
    }
}
