package fettle.engine.pack.model;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.Collections;
import java.util.List;

/**
 * A pack as it is known on the bench.
 *
 * @param name how messages and results call it
 * @param chemistry its chemistry
 * @param cells the places in series, at least one; cells side by side count as one large cell
 * @param leadOhms leads and connector together [Ω], ≥ 0
 * @param kilograms mass of the pack [kg], &gt; 0
 * @param kelvins its temperature [K]
 * @param ambientKelvins temperature of the surroundings [K]
 * @param restShiftVolts how far this pack's rest-voltage curve lies above its chemistry's usual one, per cell [V]
 * @param doubt how far the figures may be off
 */
public record PackModel(
        String name,
        Chemistry chemistry,
        List<CellModel> cells,
        double leadOhms,
        double kilograms,
        double kelvins,
        double ambientKelvins,
        double restShiftVolts,
        Doubt doubt) {
    /** Energy per mass of a pack whose mass is not known [J/kg]: 150 Wh/kg, from memory. */
    private static final double USUAL_JOULES_PER_KILOGRAM = 540_000;

    private static final double LEAST_COULOMBS = TradeUnit.MILLIAMPERE_HOUR.toSi(10);
    private static final double LEAST_OHMS = 1e-5;
    private static final double MOST_OHMS = 2;
    private static final double ROOM_KELVINS = 298.15;

    public PackModel {
        cells = List.copyOf(cells);
        Faults faults = new Faults();
        if (cells.isEmpty()) {
            faults.add("cells", name + " has no cells; expected at least one.");
        }
        for (int place = 0; place < cells.size(); place++) {
            if (cells.indexOf(cells.get(place)) == place) { // told once for cells alike
                check(faults, name + " cell " + (place + 1), cells.get(place));
            }
        }
        faults.range("lead", name + ": lead resistance", leadOhms, TradeUnit.MILLIOHM, 0, 1000, "Give it in mΩ.");
        faults.range("mass", name + ": mass", kilograms, TradeUnit.GRAM, 0.1, 100_000, "Weigh the pack, in g.");
        faults.range("temperature", name + ": temperature", kelvins, TradeUnit.CELSIUS, -40, 90, "Give it in °C.");
        faults.range("ambient", "ambient temperature", ambientKelvins, TradeUnit.CELSIUS, -40, 60, "Give it in °C.");
        faults.refuse();
    }

    private static void check(Faults faults, String what, CellModel cell) {
        faults.range("charge", what + ": charge", cell.chargeFraction(), TradeUnit.PERCENT, 0, 100, "Give it in %.");
        faults.range(
                "capacity",
                what + ": capacity",
                cell.capacityCoulombs(),
                TradeUnit.MILLIAMPERE_HOUR,
                TradeUnit.MILLIAMPERE_HOUR.fromSi(LEAST_COULOMBS),
                1_000_000,
                "Give it in mAh, as on the label.");
        faults.range(
                "resistance",
                what + ": resistance",
                cell.stepOhms(),
                TradeUnit.MILLIOHM,
                TradeUnit.MILLIOHM.fromSi(LEAST_OHMS),
                TradeUnit.MILLIOHM.fromSi(MOST_OHMS),
                "Give it per cell, in mΩ.");
    }

    /**
     * A pack of equal cells at 25 °C in 25 °C, its mass from its energy, without leads.
     *
     * @throws InputException naming every figure out of range
     */
    public static PackModel uniform(
            String name,
            Chemistry chemistry,
            int cells,
            double capacityCoulombs,
            double chargeFraction,
            double stepOhms) {
        if (cells < 1 || cells > 100) {
            throw new InputException(
                    "cells",
                    name + " has " + cells + " cells; expected 1 to 100. Count the balance-lead wires less one.");
        }
        // a capacity that is refused must not have the mass refused as well
        double joules = cells * Math.max(LEAST_COULOMBS, capacityCoulombs) * chemistry.nominalVolts();
        return new PackModel(
                name,
                chemistry,
                Collections.nCopies(cells, new CellModel(chargeFraction, capacityCoulombs, stepOhms)),
                0,
                joules / USUAL_JOULES_PER_KILOGRAM,
                ROOM_KELVINS,
                ROOM_KELVINS,
                0,
                Doubt.USUAL);
    }

    public PackModel withCells(List<CellModel> others) {
        return new PackModel(
                name, chemistry, others, leadOhms, kilograms, kelvins, ambientKelvins, restShiftVolts, doubt);
    }

    /** The same pack with every cell at one charge. */
    public PackModel withCharge(double fraction) {
        return withCells(cells.stream().map(cell -> cell.withCharge(fraction)).toList());
    }

    public PackModel withLead(double ohms) {
        return new PackModel(name, chemistry, cells, ohms, kilograms, kelvins, ambientKelvins, restShiftVolts, doubt);
    }

    public PackModel withMass(double mass) {
        return new PackModel(name, chemistry, cells, leadOhms, mass, kelvins, ambientKelvins, restShiftVolts, doubt);
    }

    /** The same pack at another temperature, in surroundings of another. */
    public PackModel at(double packKelvins, double surroundingsKelvins) {
        return new PackModel(
                name, chemistry, cells, leadOhms, kilograms, packKelvins, surroundingsKelvins, restShiftVolts, doubt);
    }

    public PackModel withDoubt(Doubt other) {
        return new PackModel(
                name, chemistry, cells, leadOhms, kilograms, kelvins, ambientKelvins, restShiftVolts, other);
    }

    PackModel withRestShift(double volts) {
        return new PackModel(name, chemistry, cells, leadOhms, kilograms, kelvins, ambientKelvins, volts, doubt);
    }

    PackModel scaled(double capacityFactor, double resistanceFactor) {
        return withCells(cells.stream()
                .map(cell -> cell.scaled(capacityFactor, resistanceFactor))
                .toList());
    }

    /** Charge of the cell with the least capacity from empty to full [C]. */
    public double leastCapacityCoulombs() {
        return cells.stream().mapToDouble(CellModel::capacityCoulombs).min().orElseThrow();
    }

    /** Charge in the cell that has least of it [C]. */
    public double leastChargeCoulombs() {
        return cells.stream()
                .mapToDouble(cell -> cell.chargeFraction() * cell.capacityCoulombs())
                .min()
                .orElseThrow();
    }
}
