package fettle.engine.health.identification;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * How a cell's resistance grows in the cold, from resistances of the same cell at several temperatures.
 *
 * <p>Formula: ln R = a + Ea/Rg·x + ½·κ·(x − x₁)(x − x₂), x = 1/T: a straight line for each charge, one slope for all, and a bend
 * that is nothing at the coldest and the warmest reading. Between them the bend takes a few per cent off, beyond it adds: the
 * steep part, charge transfer, takes over in the cold.
 *
 * <p>κ = {@value #BEND_SQUARE_KELVINS} ± {@value #BEND_DEVIATION} K². Two laws in one give s(1 − s)·(ΔEa/Rg)²: charge transfer of 35
 * to 53 kJ/mol (exchange currents of Ecker 2015, Marquis 2019, Chen 2020, O'Regan 2022) that is a sixth to a third of the
 * resistance at 25 °C (Kollmeyer 2018: pulses of 0.5 to 6 C, impedance), the rest at 10 to 15 kJ/mol: 1.0 to 4.5 million.
 *
 * @param activationJoulesPerMole Ea [J/mol] with its ±
 * @param coldestKelvins coldest reading [K]
 * @param warmestKelvins warmest reading [K]
 */
public record TemperatureLaw(Estimate activationJoulesPerMole, double coldestKelvins, double warmestKelvins) {
    private static final double BEND_SQUARE_KELVINS = 2.5e6;
    private static final double BEND_DEVIATION = 1.2e6;

    /** Half the spread over currents and charges between 0 and 25 °C of one measured cell (Kollmeyer 2018). */
    private static final double LEAST_DEVIATION = 1_500;

    /** Whole lithium cells between 0 and 25 °C, nothing being known of the cell; see {@link Arrhenius#WHOLE_CELL}. */
    public static final TemperatureLaw USUAL = new TemperatureLaw(
            new Estimate(
                    Arrhenius.WHOLE_CELL.activationJoulesPerMole(),
                    2_000,
                    List.of(new Driver("temperature law of other cells", 2_000))),
            TradeUnit.CELSIUS.toSi(0),
            Arrhenius.REFERENCE_KELVINS);

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
        return new TemperatureLaw(
                Estimate.ofIndependent(
                        Arrhenius.GAS_CONSTANT * slope,
                        List.of(
                                new Driver("scatter between charges", scatter),
                                new Driver("currents differ in their slope", LEAST_DEVIATION))),
                readings.stream().mapToDouble(Reading::kelvins).min().orElseThrow(),
                readings.stream().mapToDouble(Reading::kelvins).max().orElseThrow());
    }

    /** Factor on the resistance at 25 °C, for a temperature [K]. */
    public double factor(double kelvins) {
        return factor(kelvins, Arrhenius.REFERENCE_KELVINS);
    }

    private double factor(double kelvins, double fromKelvins) {
        double slope = activationJoulesPerMole.value() / Arrhenius.GAS_CONSTANT;
        return Math.exp(
                slope * (1 / kelvins - 1 / fromKelvins) + BEND_SQUARE_KELVINS * (bend(kelvins) - bend(fromKelvins)));
    }

    /** Resistance at another temperature, with what the law's ± adds. */
    public Estimate at(double kelvins, Estimate ohms, double ohmsKelvins) {
        double further = 1 / kelvins - 1 / ohmsKelvins;
        double bend = bend(kelvins) - bend(ohmsKelvins);
        double share = factor(kelvins, ohmsKelvins);
        double value = ohms.value() * share;
        double bySlope =
                value * activationJoulesPerMole.standardDeviation() / Arrhenius.GAS_CONSTANT * Math.abs(further);
        return Estimate.ofIndependent(
                value,
                List.of(
                        new Driver("resistance at its own temperature", ohms.standardDeviation() * share),
                        new Driver("slope of the temperature law", bySlope),
                        new Driver("bend of the temperature law", value * BEND_DEVIATION * Math.abs(bend))));
    }

    /** ½ (x − x₁)(x − x₂) [1/K²]. */
    private double bend(double kelvins) {
        return 0.5 * (1 / kelvins - 1 / coldestKelvins) * (1 / kelvins - 1 / warmestKelvins);
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
