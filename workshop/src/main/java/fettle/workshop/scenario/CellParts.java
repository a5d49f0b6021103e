package fettle.workshop.scenario;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.Resistances;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.units.TradeUnit;
import fettle.workshop.spelling.Spelling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads cells: named ones, and those of packs, which may take after a named one. Not thread-safe. */
final class CellParts {
    /** Keys of a cell's circuit. */
    static final List<String> KEYS = List.of(
            "like",
            "curve",
            "capacity_ah",
            "r0_ohms",
            "pairs",
            "resistances",
            "activation_joules_per_mole",
            "heat_capacity_joules_per_kelvin",
            "heat_transfer_watts_per_kelvin",
            "charge_efficiency",
            "capacity_factor",
            "resistance_factor");

    private static final List<String> PAIR_KEYS = List.of("ohms", "farads", "seconds");
    private static final int MOST_PAIRS = 2;

    private final Refusing refusing;
    private final Map<String, Placed> curves;
    private final Map<String, Placed> cells;
    private final Map<Placed, OpenCircuit> read = new HashMap<>();

    CellParts(Refusing refusing, Map<String, Placed> curves, Map<String, Placed> cells) {
        this.refusing = refusing;
        this.curves = curves;
        this.cells = cells;
    }

    /** The circuit of a cell whose own fields go before those of the cell it is like. */
    CellCircuit circuit(Part own) {
        Part cell = own.text("like").map(name -> own.over(named(own, name))).orElse(own);
        if (cell.has("resistances") && cell.has("r0_ohms")) {
            throw cell.refused("resistances", "the cell has both resistances and r0_ohms. Drop one.");
        }
        OpenCircuit curve = curve(cell);
        List<Part> pairs = pairs(cell);
        Resistances resistances = resistances(cell, pairs);
        return refusing.engine(
                cell.fields(),
                () -> new CellCircuit(
                                TradeUnit.AMPERE_HOUR.toSi(cell.figure("capacity_ah")),
                                curve,
                                resistances,
                                farads(pairs, 0),
                                farads(pairs, 1),
                                new Arrhenius(cell.figure("activation_joules_per_mole", 0)),
                                new ThermalNode(
                                        cell.figure("heat_capacity_joules_per_kelvin", Double.POSITIVE_INFINITY),
                                        cell.figure("heat_transfer_watts_per_kelvin", 0)),
                                cell.figure("charge_efficiency", 1))
                        .aged(cell.figure("capacity_factor", 1), cell.figure("resistance_factor", 1)));
    }

    private Part named(Part own, String name) {
        Placed found = cells.get(name);
        if (found == null) {
            throw own.refused("like", unknown("cell", name, cells.keySet().stream()));
        }
        return Part.of(refusing, "cell \"" + name + "\"", found, KEYS.subList(1, KEYS.size()));
    }

    private static String unknown(String what, String name, Stream<String> known) {
        List<String> near = Spelling.nearest(name, known.toList(), Refusing.MOST_NEAR);
        return "there is no " + what + " \"" + name + "\""
                + (near.isEmpty() ? "; none is named in the file." : "; nearest: " + String.join(", ", near) + ".");
    }

    private OpenCircuit curve(Part cell) {
        Placed given = cell.wanted("curve");
        if (given instanceof Placed.Text name) {
            Placed table = curves.get(name.value());
            return table == null ? published(cell, name.value()) : table(table, "curve \"" + name.value() + "\"");
        }
        return table(given, "curve");
    }

    private OpenCircuit table(Placed table, String what) {
        return read.computeIfAbsent(table, key -> {
            double[][] columns = Part.columns(refusing, what, key, 2);
            Placed.Fields place = new Placed.Fields(Map.of(), key.place());
            return refusing.engine(place, () -> OpenCircuit.of(columns[0], columns[1]));
        });
    }

    private OpenCircuit published(Part cell, String name) {
        List<String> chemistries =
                Stream.of(Chemistry.values()).map(Chemistry::label).toList();
        return Stream.of(Chemistry.values())
                .filter(chemistry -> chemistry.label().equalsIgnoreCase(name))
                .findFirst()
                .map(chemistry -> OpenCircuit.of(DefaultCurves.of(chemistry)))
                .orElseThrow(() -> cell.refused(
                        "curve",
                        unknown("curve", name, Stream.concat(curves.keySet().stream(), chemistries.stream()))));
    }

    private List<Part> pairs(Part cell) {
        List<Placed> items = cell.items("pairs");
        if (items.size() > MOST_PAIRS) {
            throw cell.refused(
                    "pairs", "the cell has " + items.size() + " pairs; expected at most " + MOST_PAIRS + ".");
        }
        List<Part> pairs = new ArrayList<>();
        for (Placed item : items) {
            Part pair = Part.of(refusing, "a pair", item, PAIR_KEYS);
            if (pair.has("farads") == pair.has("seconds")) {
                throw pair.refused(
                        "farads", "a pair has either farads or seconds (ohms times farads); give one of them.");
            }
            pairs.add(pair);
        }
        return pairs;
    }

    private Resistances resistances(Part cell, List<Part> pairs) {
        if (cell.has("resistances")) {
            double[][] table = Part.columns(refusing, "resistances", cell.wanted("resistances"), 2 + MOST_PAIRS);
            return refusing.engine(cell.fields(), () -> Resistances.of(table[0], table[1], table[2], table[3]));
        }
        double r0 = cell.figure("r0_ohms");
        double r1 = pairs.isEmpty() ? 0 : pairs.get(0).figure("ohms");
        double r2 = pairs.size() < MOST_PAIRS ? 0 : pairs.get(1).figure("ohms");
        refusing.engine(standing(cell, "r0_ohms"), () -> Resistances.constant(r0, 0, 0));
        return refusing.engine(standing(cell, "pairs"), () -> Resistances.constant(r0, r1, r2));
    }

    /** Where a fault of resistance is told. */
    private static Placed.Fields standing(Part cell, String key) {
        return new Placed.Fields(
                Map.of(),
                cell.value(key).map(Placed::place).orElse(cell.fields().place()));
    }

    private static double farads(List<Part> pairs, int which) {
        if (which >= pairs.size()) {
            return RcPair.NONE.farads();
        }
        Part pair = pairs.get(which);
        return pair.has("farads")
                ? pair.figure("farads")
                : RcPair.ofTime(pair.figure("ohms"), pair.figure("seconds")).farads();
    }
}
