package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The limits that tie packs together, each with a price in the bound: places, one after another, in one array.
 *
 * <p>First every resource at every step (ports that are alike count as one resource of several places), then every craft at every
 * step, every run, every source's energy, every count.
 */
final class Rows {
    private final Model model;
    private final Map<Integer, Integer> baseOfResource = new HashMap<>();
    private final Map<Integer, String> portKinds;
    private final Map<String, Integer> baseOfPortKind = new HashMap<>();
    private final List<Double> capacities = new ArrayList<>();
    private final List<Double> scales = new ArrayList<>();
    private final int craftBase;
    private final int runBase;
    private final int energyBase;
    private final int countBase;

    Rows(Model model) {
        this.model = model;
        portKinds = portKinds(model);
        for (int resource = 0; resource < model.resources().size(); resource++) {
            addResource(resource);
        }
        craftBase = capacities.size();
        add(model.crafts().size() * model.ticks(), 1, 1);
        runBase = capacities.size();
        add(model.problem().runs().size(), 1, 1);
        energyBase = capacities.size();
        for (int wattHours : model.energyWattHours()) {
            add(1, wattHours, Math.max(1, usualWattHours()));
        }
        countBase = capacities.size();
        add(Count.SIZE, 0, 1);
    }

    private void addResource(int resource) {
        Model.Resource of = model.resources().get(resource);
        int capacity = of.capacity()[0];
        if (of.kind() == Model.Kind.PORT) {
            String kind = portKinds.getOrDefault(resource, "unused " + resource);
            Integer base = baseOfPortKind.get(kind);
            if (base == null) {
                baseOfPortKind.put(kind, capacities.size());
                baseOfResource.put(resource, capacities.size());
                add(model.ticks(), 1, 1);
            } else {
                baseOfResource.put(resource, base);
                for (int tick = 0; tick < model.ticks(); tick++) {
                    capacities.set(base + tick, capacities.get(base + tick) + 1);
                }
            }
        } else if (capacity < Integer.MAX_VALUE) {
            baseOfResource.put(resource, capacities.size());
            add(model.ticks(), capacity, Math.max(1, usualUse(resource)));
        }
    }

    /** Ports that every option has together, or not at all, are alike. */
    private static Map<Integer, String> portKinds(Model model) {
        Map<Integer, StringBuilder> kinds = new HashMap<>();
        for (Course course : model.courses()) {
            for (int option = 0; option < course.options().size(); option++) {
                for (Option.Place place : course.options().get(option).places()) {
                    kinds.computeIfAbsent(place.port(), unseen -> new StringBuilder())
                            .append(course.index())
                            .append('.')
                            .append(option)
                            .append(' ');
                }
            }
        }
        Map<Integer, String> names = new HashMap<>();
        kinds.forEach((port, kind) -> names.put(port, kind.toString()));
        return names;
    }

    private double usualUse(int resource) {
        return model.courses().stream()
                .flatMap(course -> course.options().stream())
                .flatMap(option -> option.uses().stream())
                .filter(use -> use.resource() == resource)
                .mapToInt(use -> Arrays.stream(use.amounts()).max().orElse(0))
                .average()
                .orElse(1);
    }

    private double usualWattHours() {
        return model.courses().stream()
                .flatMap(course -> course.options().stream())
                .mapToInt(Option::wattHours)
                .filter(wattHours -> wattHours > 0)
                .average()
                .orElse(1);
    }

    private void add(int times, double capacity, double scale) {
        for (int i = 0; i < times; i++) {
            capacities.add(capacity);
            scales.add(scale);
        }
    }

    int size() {
        return capacities.size();
    }

    double[] capacities() {
        return capacities.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** A usual use of each row, by which steps are scaled. */
    double[] scales() {
        return scales.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** First row of a resource; −1 if it is never short. */
    int resource(int resource) {
        return baseOfResource.getOrDefault(resource, -1);
    }

    int craft(int craft) {
        return craftBase + craft * model.ticks();
    }

    int run(int run) {
        return runBase + run;
    }

    /** Row of a source's energy; −1 if it does not run out. */
    int energy(int source) {
        return model.energyWattHours()[source] == Integer.MAX_VALUE ? -1 : energyBase + source;
    }

    int count(int count) {
        return countBase + count;
    }

    /** Prices summed up along every block of steps; block b begins at b·(ticks + 1). */
    double[] summed(double[] prices) {
        int ticks = model.ticks();
        double[] summed = new double[runBase + runBase / ticks];
        for (int base = 0; base < runBase; base += ticks) {
            int block = base + base / ticks;
            for (int tick = 0; tick < ticks; tick++) {
                summed[block + tick + 1] = summed[block + tick] + prices[base + tick];
            }
        }
        return summed;
    }

    /** Places of an option by kind of port. */
    List<List<Option.Place>> kinds(Option option) {
        Map<Integer, List<Option.Place>> kinds = new LinkedHashMap<>();
        for (Option.Place place : option.places()) {
            kinds.computeIfAbsent(resource(place.port()), kind -> new ArrayList<>())
                    .add(place);
        }
        return List.copyOf(kinds.values());
    }
}
