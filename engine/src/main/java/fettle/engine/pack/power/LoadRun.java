package fettle.engine.pack.power;

import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.StepOutcome;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Loads simulated until one of a pack's limits is met. */
final class LoadRun {
    /** About this many time steps for a whole discharge. */
    private static final double STEPS = 1500;

    private static final double LONGEST_SECONDS = 30 * 86_400.0;

    private LoadRun() {}

    /** One load from the pack's present charge until a limit is met. */
    static Summary untilLimit(PackModel pack, Limits limits, Demand load, double roughAmps) {
        double step = Math.min(5, pack.leastCapacityCoulombs() / roughAmps / STEPS);
        List<End> ends = new ArrayList<>(ends(limits));
        ends.add(End.after(LONGEST_SECONDS));
        return run(pack, List.of(new ProtocolStep("load", load, ends, step)));
    }

    /** Steps one after the other. */
    static Summary run(PackModel pack, List<ProtocolStep> steps) {
        return Simulation.run(Circuits.bench(pack, Optional.empty()), new Protocol(steps));
    }

    /** The limits that end a load: weakest cell's volts, warmest cell, reserve. */
    static List<End> ends(Limits limits) {
        return List.of(
                new End(EndKind.CELL_VOLTS_AT_MOST, limits.si(Quantity.LOAD_MINIMUM)),
                new End(EndKind.TEMPERATURE_AT_LEAST, limits.si(Quantity.TEMPERATURE_LIMIT)),
                new End(EndKind.CELL_CHARGE_AT_MOST, limits.si(Quantity.RESERVE)));
    }

    /** The limit that ended it, in words. */
    static String limit(StepOutcome outcome, Limits limits) {
        return switch (outcome.endedBy().kind()) {
            case CELL_VOLTS_AT_MOST ->
                "the weakest cell's volts under load, "
                        + limits.rule(Quantity.LOAD_MINIMUM).print();
            case TEMPERATURE_AT_LEAST ->
                "the warmest cell, " + limits.rule(Quantity.TEMPERATURE_LIMIT).print();
            case CELL_CHARGE_AT_MOST ->
                "the reserve, " + limits.rule(Quantity.RESERVE).print();
            default -> "the end of the load";
        };
    }
}
