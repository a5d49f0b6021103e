package fettle.engine.pack.power;

import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.StepOutcome;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;

/** A profile repeated until one of a pack's limits is met. */
final class ProfileRun {
    private static final int STEPS_A_PART = 40;
    private static final int MOST_PARTS = 20_000;

    private ProfileRun() {}

    static Summary untilLimit(PackModel pack, Limits limits, List<ProfilePart> parts) {
        List<ProtocolStep> steps = repeated(pack, limits, parts);
        List<StepOutcome> outcomes = LoadRun.run(pack, steps).steps();
        int last = 0;
        while (outcomes.get(last).endedBy().kind() == EndKind.AFTER) {
            last++;
        }
        // a second run, so that the summary is of the instant the limit was met
        return LoadRun.run(pack, steps.subList(0, last + 1));
    }

    /** Often enough to draw more than the pack holds, so that a limit must be met. */
    private static List<ProtocolStep> repeated(PackModel pack, Limits limits, List<ProfilePart> parts) {
        double perRound =
                parts.stream().mapToDouble(part -> part.amps() * part.seconds()).sum();
        double rounds = Math.ceil(pack.leastChargeCoulombs() / perRound) + 1;
        if (rounds * parts.size() > MOST_PARTS) {
            throw new InputException(
                    "load",
                    "the profile would be repeated " + (long) rounds
                            + " times until the pack is empty; expected at most " + MOST_PARTS / parts.size()
                            + ". Make its parts longer.");
        }
        List<ProtocolStep> steps = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            parts.forEach(part -> steps.add(step(part, limits)));
        }
        return steps;
    }

    private static ProtocolStep step(ProfilePart part, Limits limits) {
        List<End> ends = new ArrayList<>(LoadRun.ends(limits));
        ends.add(End.after(part.seconds()));
        return new ProtocolStep(
                "part of the profile", new Demand.Current(part.amps()), ends, part.seconds() / STEPS_A_PART);
    }
}
