package fettle.engine.pack.simulation;

import fettle.engine.units.Faults;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is done with the packs, step after step.
 *
 * @param steps the steps in order, at least one
 */
public record Protocol(List<ProtocolStep> steps) {
    private static final List<EndKind[]> OPPOSITES = List.of(
            new EndKind[] {EndKind.VOLTS_AT_MOST, EndKind.VOLTS_AT_LEAST},
            new EndKind[] {EndKind.CELL_VOLTS_AT_MOST, EndKind.CELL_VOLTS_AT_LEAST},
            new EndKind[] {EndKind.CELL_CHARGE_AT_MOST, EndKind.CELL_CHARGE_AT_LEAST},
            new EndKind[] {EndKind.TEMPERATURE_AT_MOST, EndKind.TEMPERATURE_AT_LEAST});

    public Protocol {
        steps = List.copyOf(steps);
        Faults faults = new Faults();
        if (steps.isEmpty()) {
            faults.add("steps", "the protocol has no steps; expected at least one.");
        }
        steps.forEach(step -> check(step, faults));
        faults.refuse();
    }

    public static Protocol of(ProtocolStep... steps) {
        return new Protocol(List.of(steps));
    }

    /** The same protocol calculated with every time step times a factor. */
    public Protocol withStepsTimes(double factor) {
        return new Protocol(steps.stream()
                .map(step -> step.withStepSeconds(step.stepSeconds() * factor))
                .toList());
    }

    private static void check(ProtocolStep step, Faults faults) {
        String name = "step \"" + step.name() + "\"";
        if (!(step.stepSeconds() > 0) || Double.isInfinite(step.stepSeconds())) {
            faults.add("step_seconds", name + ": time step is " + step.stepSeconds() + " s; expected more than 0 s.");
        }
        check(name, step.demand(), faults);
        checkEnds(name, step, faults);
    }

    private static void check(String name, Demand demand, Faults faults) {
        if (demand instanceof Demand.Current current) {
            finite(name, "current", "current", current.dischargeAmps(), "A", faults);
        } else if (demand instanceof Demand.Power power) {
            finite(name, "power", "power", power.dischargeWatts(), "W", faults);
        } else if (demand instanceof Demand.Resistor load) {
            positive(name, "resistance", "load resistance", load.loadOhms(), "Ω", faults);
            finite(name, "resistance", "load resistance", load.loadOhms(), "Ω", faults);
        } else if (demand instanceof Demand.Charge charge) {
            positive(name, "volts", "voltage limit", charge.limitVolts(), "V", faults);
            finite(name, "volts", "voltage limit", charge.limitVolts(), "V", faults);
            positive(name, "current", "current limit", charge.limitAmps(), "A", faults);
            finite(name, "current", "current limit", charge.limitAmps(), "A", faults);
            positive(name, "power", "power limit", charge.limitWatts(), "W", faults);
            if (!(charge.sourceOhms() >= 0) || Double.isInfinite(charge.sourceOhms())) {
                faults.add(
                        "source_resistance",
                        name + ": source resistance is " + charge.sourceOhms() + " Ω; expected 0 Ω or more.");
            }
        }
    }

    private static void finite(String name, String field, String what, double value, String unit, Faults faults) {
        if (!Double.isFinite(value)) {
            faults.add(field, name + ": " + what + " is " + value + " " + unit + "; expected a finite figure.");
        }
    }

    private static void positive(String name, String field, String what, double value, String unit, Faults faults) {
        if (!(value > 0)) {
            faults.add(
                    field, name + ": " + what + " is " + value + " " + unit + "; expected more than 0 " + unit + ".");
        }
    }

    private static void checkEnds(String name, ProtocolStep step, Faults faults) {
        if (step.ends().isEmpty()) {
            faults.add("ends", name + " has no end condition; expected at least one, e.g. a time.");
            return;
        }
        for (End end : step.ends()) {
            if (!Double.isFinite(end.value())) {
                faults.add(
                        "ends",
                        name + ": the figure of \"" + end.kind().meaning() + "\" is " + end.value()
                                + "; expected a finite figure.");
            } else if (end.value() < 0 && end.kind() != EndKind.CELL_CHARGE_AT_MOST) {
                faults.add("ends", name + ": \"" + end.sentence() + "\" is below 0; expected 0 or more.");
            }
        }
        for (EndKind[] pair : OPPOSITES) {
            refuseContradiction(name, value(step, pair[0]), value(step, pair[1]), faults);
        }
        refuseUnreachable(name, step, faults);
    }

    private static Optional<End> value(ProtocolStep step, EndKind kind) {
        return step.ends().stream().filter(end -> end.kind() == kind).findFirst();
    }

    private static void refuseContradiction(String name, Optional<End> atMost, Optional<End> atLeast, Faults faults) {
        if (atMost.isPresent()
                && atLeast.isPresent()
                && atMost.get().value() >= atLeast.get().value()) {
            faults.add(
                    "ends",
                    name + ": \"" + atMost.get().sentence() + "\" and \""
                            + atLeast.get().sentence()
                            + "\" leave nothing between them. Swap the figures, or drop one.");
        }
    }

    private static void refuseUnreachable(String name, ProtocolStep step, Faults faults) {
        List<Optional<String>> reasons =
                step.ends().stream().map(end -> whyNever(step.demand(), end)).toList();
        if (reasons.stream().allMatch(Optional::isPresent)) {
            String why = reasons.stream().map(Optional::get).collect(Collectors.joining("; "));
            faults.add("ends", name + " can never end: " + why + ". Add a condition that can be met, or a time.");
        }
    }

    private static Optional<String> whyNever(Demand demand, End end) {
        if (end.kind() == EndKind.CURRENT_AT_MOST
                && demand instanceof Demand.Current current
                && Math.abs(current.dischargeAmps()) > end.value()) {
            return Optional.of("\"" + end.sentence() + "\", but the current is held at "
                    + Math.abs(current.dischargeAmps()) + " A");
        }
        if (end.kind() == EndKind.CHARGE_PASSED
                && end.value() > 0
                && (demand instanceof Demand.Rest
                        || demand instanceof Demand.Current current && current.dischargeAmps() == 0)) {
            return Optional.of("\"" + end.sentence() + "\", but no current flows at rest");
        }
        if (end.kind() == EndKind.VOLTS_AT_LEAST
                && demand instanceof Demand.Charge charge
                && end.value() > charge.limitVolts()) {
            return Optional.of("\"" + end.sentence() + "\", but the source stops at " + charge.limitVolts() + " V");
        }
        return Optional.empty();
    }
}
