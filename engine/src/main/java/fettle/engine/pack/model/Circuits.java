package fettle.engine.pack.model;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.pack.simulation.Balancer;
import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.CellAt;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.SeriesGroup;
import fettle.engine.working.Citation;
import java.util.List;
import java.util.Optional;

/** The circuit of a pack of which a check and a resistance are known. */
public final class Circuits {
    /** Where the shape of the resistance over time comes from. */
    public static final Citation SHAPE = Citation.published(
            "resistance over time after a load comes on, relative to 0.5 s: Wiggins et al., 33 Ah pouch at 25 °C (1.30 at"
                    + " 10 s, 1.62 at 30 s); Kollmeyer 2018, 18650PF at 25 °C (1.26 at 9.9 s)");

    /** Fast pair: share of the step resistance, and its time constant [s]. */
    private static final double FAST_SHARE = 0.08;

    private static final double FAST_SECONDS = 2;

    /** Slow pair. */
    private static final double SLOW_SHARE = 0.90;

    private static final double SLOW_SECONDS = 35;

    /** Heat given off to still air, radiation included [W/(m²·K)]: Ecker 2015, Marquis 2019 and Chen 2020 assume 10. */
    private static final double AIR_WATTS_PER_SQUARE_METRE_KELVIN = 10;

    /** Density of a pouch pack [kg/m³], from memory. */
    private static final double KILOGRAMS_PER_CUBIC_METRE = 2000;

    /** Surface of a flat box over the two-thirds power of its volume (sides 4 : 2 : 1). */
    private static final double SURFACE_SHAPE = 7;

    private Circuits() {}

    /** One pack alone. */
    public static Bench bench(PackModel pack, Optional<Balancer> balancer) {
        return bench(List.of(pack), balancer);
    }

    /** Packs side by side, each through its own leads; the first tells the surroundings. */
    public static Bench bench(List<PackModel> packs, Optional<Balancer> balancer) {
        return new Bench(
                packs.stream().map(Circuits::circuit).toList(),
                balancer,
                packs.get(0).ambientKelvins());
    }

    /** The circuit of a pack. */
    public static PackCircuit circuit(PackModel pack) {
        OpenCircuit rest = rest(pack);
        ThermalNode share = share(pack);
        List<SeriesGroup> places = pack.cells().stream()
                .map(cell -> SeriesGroup.of(new CellAt(cell(cell, rest, share), cell.chargeFraction(), pack.kelvins())))
                .toList();
        return new PackCircuit(pack.name(), places, pack.leadOhms());
    }

    private static CellCircuit cell(CellModel cell, OpenCircuit rest, ThermalNode node) {
        return CellCircuit.of(
                        cell.capacityCoulombs(),
                        rest,
                        cell.stepOhms(),
                        RcPair.ofTime(FAST_SHARE * cell.stepOhms(), FAST_SECONDS),
                        RcPair.ofTime(SLOW_SHARE * cell.stepOhms(), SLOW_SECONDS))
                .with(Arrhenius.WHOLE_CELL, node);
    }

    /** Volts of the pack at rest [V]. */
    public static double restVolts(PackModel pack) {
        OpenCircuit rest = rest(pack);
        return pack.cells().stream()
                .mapToDouble(cell -> rest.volts(cell.chargeFraction()))
                .sum();
    }

    private static OpenCircuit rest(PackModel pack) {
        return OpenCircuit.of(DefaultCurves.of(pack.chemistry())).raised(pack.restShiftVolts());
    }

    /** Each cell holds and sheds its share of the pack's heat. */
    private static ThermalNode share(PackModel pack) {
        double volume = pack.kilograms() / KILOGRAMS_PER_CUBIC_METRE;
        double surface = SURFACE_SHAPE * Math.pow(volume, 2.0 / 3);
        int cells = pack.cells().size();
        return ThermalNode.of(
                pack.kilograms() / cells,
                ThermalNode.POUCH_JOULES_PER_KILOGRAM_KELVIN,
                AIR_WATTS_PER_SQUARE_METRE_KELVIN * surface / cells);
    }
}
