package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is simulated: one pack, or several joined side by side through their leads.
 *
 * @param packs the packs, at least one
 * @param balancer works throughout on every pack, if there is one
 * @param ambientKelvins temperature of the surroundings [K]
 */
public record Bench(List<PackCircuit> packs, Optional<Balancer> balancer, double ambientKelvins) {
    private static final double COLDEST_CELSIUS = -60;
    private static final double HOTTEST_CELSIUS = 150;
    private static final double LEAST_CHARGE = -0.5;
    private static final double MOST_CHARGE = 1.5;

    public Bench {
        packs = List.copyOf(packs);
        Faults faults = new Faults();
        if (packs.isEmpty()) {
            faults.add("packs", "there is no pack; expected at least one.");
        }
        temperature(faults, "ambient", ambientKelvins);
        for (PackCircuit pack : packs) {
            check(pack, packs.size() > 1, faults);
        }
        balancer.ifPresent(bleed -> check(bleed, faults));
        faults.refuse();
    }

    /** One pack without a balancer. */
    public static Bench of(PackCircuit pack, double ambientKelvins) {
        return new Bench(List.of(pack), Optional.empty(), ambientKelvins);
    }

    private static void check(PackCircuit pack, boolean joined, Faults faults) {
        if (!(pack.leadOhms() >= 0) || !Double.isFinite(pack.leadOhms())) {
            faults.add("lead", pack.name() + ": lead resistance is " + pack.leadOhms() + " Ω; expected 0 Ω or more.");
        }
        if (pack.groups().isEmpty()) {
            faults.add("cells", pack.name() + " has no cells; expected at least one.");
        }
        boolean free = joined && pack.leadOhms() == 0;
        for (SeriesGroup group : pack.groups()) {
            check(pack.name(), group, free, faults);
        }
    }

    private static void check(String pack, SeriesGroup group, boolean joinedWithoutLead, Faults faults) {
        if (group.cells().isEmpty()) {
            faults.add("cells", pack + " has a place without a cell; expected at least one.");
        }
        if (!(group.bleedOhms() > 0)) {
            faults.add("bleed", pack + ": bleed resistor is " + group.bleedOhms() + " Ω; expected more than 0 Ω.");
        }
        boolean sideBySide = joinedWithoutLead || group.cells().size() > 1;
        for (CellAt cell : group.cells()) {
            if (sideBySide && cell.circuit().resistances().smallestOhms(0) == 0) {
                faults.add(
                        "resistance",
                        pack
                                + ": a cell joined side by side has R0 of 0 Ω; its current would have no bound. Give its R0.");
            }
            if (!(cell.chargeFraction() >= LEAST_CHARGE && cell.chargeFraction() <= MOST_CHARGE)) {
                faults.add(
                        "charge",
                        pack + ": a cell starts at charge " + cell.chargeFraction()
                                + "; expected a fraction, 0 for empty and 1 for full.");
            }
            temperature(faults, "temperature", cell.kelvins());
        }
    }

    private static void temperature(Faults faults, String field, double kelvins) {
        faults.range(
                field,
                field,
                kelvins,
                TradeUnit.CELSIUS,
                COLDEST_CELSIUS,
                HOTTEST_CELSIUS,
                "Check whether it is in °C or K.");
    }

    private static void check(Balancer bleed, Faults faults) {
        if (!(bleed.bleedAmps() > 0) || !Double.isFinite(bleed.bleedAmps())) {
            faults.add("bleed_current", "bleed current is " + bleed.bleedAmps() + " A; expected more than 0 A.");
        }
        if (!(bleed.duty() > 0 && bleed.duty() <= 1)) {
            faults.add("duty", "bleed duty is " + bleed.duty() + "; expected more than 0, at most 1.");
        }
        if (!(bleed.withinVolts() >= 0) || !Double.isFinite(bleed.withinVolts())) {
            faults.add("within", "the balancer's window is " + bleed.withinVolts() + " V; expected 0 V or more.");
        }
    }

    /** Cells of all packs in the order of packs, places, side by side. */
    public List<CellCircuit> circuits() {
        return cells().map(CellAt::circuit).toList();
    }

    Stream<CellAt> cells() {
        return packs.stream().flatMap(pack -> pack.groups().stream()).flatMap(group -> group.cells().stream());
    }
}
