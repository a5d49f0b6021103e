package fettle.workshop.scenario;

import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.units.TradeUnit;
import fettle.workshop.spelling.Spelling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Reads the steps of a protocol; groups of steps may repeat. Not thread-safe. */
final class StepParts {
    private static final List<String> DEMANDS =
            List.of("rest", "discharge_amps", "charge_amps", "discharge_watts", "charge_watts", "load_ohms", "charge");
    private static final List<String> KEYS = List.of(
            "name",
            "step_seconds",
            "until",
            "rest",
            "discharge_amps",
            "charge_amps",
            "discharge_watts",
            "charge_watts",
            "load_ohms",
            "charge");
    private static final List<String> REPEAT_KEYS = List.of("repeat", "steps");
    private static final List<String> CHARGE_KEYS = List.of("volts", "amps", "watts", "source_ohms");
    private static final int MOST_STEPS = 100_000;

    private final Refusing refusing;
    private final double stepSeconds;
    private final List<ProtocolStep> steps = new ArrayList<>();

    StepParts(Refusing refusing, double stepSeconds) {
        this.refusing = refusing;
        this.stepSeconds = stepSeconds;
    }

    List<ProtocolStep> steps() {
        return steps;
    }

    /** Adds a step, or a group as often as it repeats. */
    void add(Placed value) {
        if (value instanceof Placed.Fields fields && fields.values().containsKey("repeat")) {
            Part group = Part.of(refusing, "a repeated group", value, REPEAT_KEYS);
            int times = group.count("repeat", 1, MOST_STEPS);
            for (int time = 0; time < times; time++) {
                Part.items(refusing, "steps", group.wanted("steps")).forEach(this::add);
            }
            return;
        }
        if (steps.size() >= MOST_STEPS) {
            throw refusing.at(value.place(), "steps", "the protocol has more than " + MOST_STEPS + " steps.");
        }
        Part step = Part.of(refusing, "a step", value, KEYS);
        ProtocolStep read = new ProtocolStep(
                step.text("name").orElse("step " + (steps.size() + 1)),
                demand(step),
                ends(step),
                step.figure("step_seconds", stepSeconds));
        refusing.engine(step.fields(), () -> Protocol.of(read));
        steps.add(read);
    }

    private Demand demand(Part step) {
        List<String> given = DEMANDS.stream().filter(step::has).toList();
        if (given.size() != 1) {
            throw step.refused(
                    given.isEmpty() ? "" : given.get(1),
                    "a step asks for one of " + String.join(", ", DEMANDS) + "; here are " + given.size() + ".");
        }
        String key = given.get(0);
        return switch (key) {
            case "rest" -> new Demand.Rest();
            case "discharge_amps" -> new Demand.Current(magnitude(step, key));
            case "charge_amps" -> new Demand.Current(-magnitude(step, key));
            case "discharge_watts" -> new Demand.Power(magnitude(step, key));
            case "charge_watts" -> new Demand.Power(-magnitude(step, key));
            case "load_ohms" -> new Demand.Resistor(step.figure(key));
            default -> charge(Part.of(refusing, "charge", step.wanted(key), CHARGE_KEYS));
        };
    }

    private static double magnitude(Part step, String key) {
        double figure = step.figure(key);
        if (figure < 0) {
            throw step.refused(key, key + " is " + figure + "; expected 0 or more. The key says the direction.");
        }
        return figure;
    }

    private static Demand charge(Part charge) {
        return new Demand.Charge(
                charge.figure("volts"),
                charge.figure("amps"),
                charge.figure("watts", Double.POSITIVE_INFINITY),
                charge.figure("source_ohms", 0));
    }

    private List<End> ends(Part step) {
        Placed until = step.wanted("until");
        List<String> keys = Arrays.stream(EndKind.values()).map(EndKind::key).toList();
        if (!(until instanceof Placed.Fields fields)) {
            throw refusing.at(until.place(), "until", "until is " + until.kind() + "; expected an object.");
        }
        List<End> ends = new ArrayList<>();
        for (Map.Entry<String, Placed> field : fields.values().entrySet()) {
            EndKind kind = Arrays.stream(EndKind.values())
                    .filter(known -> known.key().equals(field.getKey()))
                    .findFirst()
                    .orElseThrow(() -> refusing.at(
                            field.getValue().place(),
                            "until",
                            "there is no condition \"" + field.getKey() + "\"; nearest: "
                                    + String.join(", ", Spelling.nearest(field.getKey(), keys, Refusing.MOST_NEAR))
                                    + "."));
            Part part = Part.of(refusing, "until", until, keys);
            ends.add(new End(kind, si(kind, part.figure(field.getKey()))));
        }
        return ends;
    }

    /** Charges are fractions throughout the file. */
    private static double si(EndKind kind, double figure) {
        return kind.unit() == TradeUnit.PERCENT ? figure : kind.unit().toSi(figure);
    }
}
