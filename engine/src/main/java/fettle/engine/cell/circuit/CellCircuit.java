package fettle.engine.cell.circuit;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.Locale;

/**
 * The equivalent circuit of one cell.
 *
 * <p>Formula: V = rest(z) − v1 − v2 − I·R0, dv/dt = (I − v/R)/C for each pair, dz/dt = −I/Q (times the charge efficiency
 * when charging), and heat I·(rest − V) plus the charge lost, into one thermal node.
 *
 * @param capacityCoulombs charge from empty to full Q [C], > 0
 * @param rest rest volts against charge
 * @param resistances R0, R1, R2 at 25 °C against charge
 * @param c1Farads capacitance of the first pair [F]
 * @param c2Farads capacitance of the second pair [F]
 * @param arrhenius how all three resistances depend on temperature
 * @param thermal the lump of heat
 * @param chargeEfficiency share of the charge put in that stays, 0 < η ≤ 1
 */
public record CellCircuit(
        double capacityCoulombs,
        OpenCircuit rest,
        Resistances resistances,
        double c1Farads,
        double c2Farads,
        Arrhenius arrhenius,
        ThermalNode thermal,
        double chargeEfficiency) {

    public CellCircuit {
        Faults faults = new Faults();
        positive(faults, "capacity", "capacity", TradeUnit.AMPERE_HOUR.fromSi(capacityCoulombs), "Ah");
        positive(faults, "c1", "C1", c1Farads, "F");
        positive(faults, "c2", "C2", c2Farads, "F");
        if (!(arrhenius.activationJoulesPerMole() >= 0) || !Double.isFinite(arrhenius.activationJoulesPerMole())) {
            faults.add(
                    "activation_energy",
                    "activation energy is " + arrhenius.activationJoulesPerMole() + " J/mol; expected 0 or more.");
        }
        if (!(thermal.joulesPerKelvin() > 0)) {
            faults.add(
                    "heat_capacity",
                    "heat capacity is " + thermal.joulesPerKelvin()
                            + " J/K; expected more than 0. Leave it out to hold the temperature.");
        }
        if (!(thermal.wattsPerKelvin() >= 0) || !Double.isFinite(thermal.wattsPerKelvin())) {
            faults.add("heat_transfer", "heat transfer is " + thermal.wattsPerKelvin() + " W/K; expected 0 or more.");
        }
        if (!(chargeEfficiency > 0 && chargeEfficiency <= 1)) {
            faults.add(
                    "charge_efficiency",
                    "charge efficiency is " + chargeEfficiency + "; expected more than 0, at most 1.");
        }
        faults.refuse();
    }

    private static void positive(Faults faults, String field, String what, double value, String unit) {
        if (!(value > 0) || !Double.isFinite(value)) {
            faults.add(
                    field,
                    String.format(
                            Locale.ROOT,
                            "%s is %s %s; expected more than 0 %s. Check the figure and its unit.",
                            what,
                            value,
                            unit,
                            unit));
        }
    }

    /** A cell whose resistances do not depend on charge or temperature, held at its temperature. */
    public static CellCircuit of(double capacityCoulombs, OpenCircuit rest, double r0Ohms, RcPair one, RcPair two) {
        return new CellCircuit(
                capacityCoulombs,
                rest,
                Resistances.constant(r0Ohms, one.ohms(), two.ohms()),
                one.farads(),
                two.farads(),
                Arrhenius.NONE,
                ThermalNode.ISOTHERMAL,
                1);
    }

    /** The same cell with a temperature law and a lump of heat. */
    public CellCircuit with(Arrhenius law, ThermalNode node) {
        return new CellCircuit(capacityCoulombs, rest, resistances, c1Farads, c2Farads, law, node, chargeEfficiency);
    }

    /** The same cell with another charge efficiency. */
    public CellCircuit withChargeEfficiency(double efficiency) {
        return new CellCircuit(capacityCoulombs, rest, resistances, c1Farads, c2Farads, arrhenius, thermal, efficiency);
    }

    /**
     * The same cell after ageing; time constants stay.
     *
     * @param capacityFactor share of the capacity that is left, > 0
     * @param resistanceFactor growth of all resistances, > 0
     */
    public CellCircuit aged(double capacityFactor, double resistanceFactor) {
        return new CellCircuit(
                capacityCoulombs * capacityFactor,
                rest,
                resistances.times(resistanceFactor),
                c1Farads / resistanceFactor,
                c2Farads / resistanceFactor,
                arrhenius,
                thermal,
                chargeEfficiency);
    }

    /** R0 + R1 + R2 [Ω] at a charge and temperature: what a long load sees. */
    public double settledOhms(double chargeFraction, double kelvins) {
        double sum = resistances.ohms(0, chargeFraction)
                + resistances.ohms(1, chargeFraction)
                + resistances.ohms(2, chargeFraction);
        return sum * arrhenius.factor(kelvins);
    }
}
