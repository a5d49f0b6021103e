package fettle.workshop.scenario;

import fettle.engine.pack.simulation.Balancer;
import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.Progress;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A scenario file as read: what to simulate and how finely to tell it.
 *
 * @param title its title, empty if it has none
 * @param bench packs, balancer and surroundings
 * @param protocol the steps
 * @param sampleSeconds time between rows of the series [s]
 */
public record Scenario(String title, Bench bench, Protocol protocol, double sampleSeconds) {
    private static final List<String> KEYS = List.of(
            "title",
            "ambient_celsius",
            "curves",
            "cells",
            "packs",
            "balancer",
            "step_seconds",
            "sample_seconds",
            "steps");
    private static final List<String> BALANCER_KEYS = List.of("bleed_amps", "duty", "within_volts");
    private static final double ROOM_CELSIUS = 25;
    private static final double USUAL_STEP_SECONDS = 1;
    private static final double USUAL_SAMPLE_SECONDS = 10;

    /**
     * Reads a scenario.
     *
     * @param file how messages call the file
     * @param text its content
     * @throws InputException with the line and column of every fault
     */
    public static Scenario parse(String file, String text) {
        Refusing refusing = new Refusing(file);
        Part whole = Part.of(refusing, "the scenario", PlacedJson.parse(refusing, text), KEYS);
        double ambient = TradeUnit.CELSIUS.toSi(whole.figure("ambient_celsius", ROOM_CELSIUS));
        CellParts cells = new CellParts(refusing, named(refusing, whole, "curves"), named(refusing, whole, "cells"));
        PackParts packParts = new PackParts(refusing, cells, ambient);
        List<PackCircuit> packs = new ArrayList<>();
        for (Placed pack : Part.items(refusing, "packs", whole.wanted("packs"))) {
            packs.addAll(refusing.part(() -> packParts.pack(pack, packs.size() + 1)));
        }
        StepParts steps = new StepParts(refusing, whole.figure("step_seconds", USUAL_STEP_SECONDS));
        for (Placed step : Part.items(refusing, "steps", whole.wanted("steps"))) {
            refusing.part(() -> {
                steps.add(step);
                return step;
            });
        }
        refusing.refuse();
        Optional<Balancer> balancer = whole.value("balancer").map(value -> balancer(refusing, value));
        return new Scenario(
                whole.text("title").orElse(""),
                refusing.engine(whole.fields(), () -> new Bench(packs, balancer, ambient)),
                refusing.engine(whole.fields(), () -> new Protocol(steps.steps())),
                whole.figure("sample_seconds", USUAL_SAMPLE_SECONDS));
    }

    private static Map<String, Placed> named(Refusing refusing, Part whole, String key) {
        return whole.value(key)
                .map(value -> {
                    if (value instanceof Placed.Fields fields) {
                        return fields.values();
                    }
                    throw refusing.at(
                            value.place(), key, key + " is " + value.kind() + "; expected an object of named ones.");
                })
                .orElseGet(Map::of);
    }

    private static Balancer balancer(Refusing refusing, Placed value) {
        Part part = Part.of(refusing, "the balancer", value, BALANCER_KEYS);
        return new Balancer(part.figure("bleed_amps"), part.figure("duty", 1), part.figure("within_volts", 0));
    }

    /**
     * Simulates it.
     *
     * @param row takes each row of the series as it comes, columns as in {@link SeriesColumns}; reused between calls
     * @param progress is asked now and then whether to go on
     */
    public Summary run(Consumer<double[]> row, Progress progress) {
        SeriesColumns columns = SeriesColumns.of(bench);
        double[] figures = new double[columns.names().size()];
        return Simulation.run(
                bench,
                protocol,
                moment -> {
                    columns.fill(moment, figures);
                    row.accept(figures);
                },
                sampleSeconds,
                progress);
    }
}
