package fettle.workshop;

import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.engine.outing.Outing;
import fettle.engine.outing.RunWish;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.pack.model.PackModel;
import fettle.engine.travel.CarriedAs;
import fettle.engine.travel.PackingList;
import fettle.engine.travel.TravelPack;
import fettle.engine.travel.TravelTable;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.planner.timer.RunDemand;
import fettle.planner.timer.RunDemands;
import fettle.planner.timer.TimerAnswer;
import fettle.planner.timer.TimerQuestion;
import fettle.workshop.OutingPapers.Packed;
import fettle.workshop.OutingPapers.RunTimer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Makes what is taken along on an outing: timers of the planned runs, and the packs as baggage. Used once. */
final class Papers {
    private static final double FULL = 1;

    private final Workshop workshop;
    private final OutingState state;
    private final Map<String, KnownPack> packs = new HashMap<>();
    private final Map<List<String>, RunTimer> known = new HashMap<>();

    Papers(Workshop workshop, OutingState state) {
        this.workshop = workshop;
        this.state = state;
    }

    OutingPapers made() {
        Outing outing = state.outing();
        List<PlannedRun> runs = state.plan() == null ? List.of() : state.plan().runs();
        PackingList packing = outing.packs().isEmpty() ? null : packing(outing);
        return new OutingPapers(
                outing.name(),
                runs.stream().map(this::timer).toList(),
                packing == null
                        ? List.of()
                        : packing.lines().stream()
                                .map(line -> new Packed(
                                        line.tag(),
                                        line.ratingJoules(),
                                        line.carriage().label(),
                                        line.first(),
                                        line.why()))
                                .toList(),
                packing == null ? List.of() : packing.counts(),
                packing == null ? "" : packing.confirm());
    }

    private PackingList packing(Outing outing) {
        List<TravelPack> packs = outing.packs().stream()
                .map(tag -> {
                    Assessment assessment = known(tag).assessment();
                    Estimate charge = assessment.charge();
                    return new TravelPack(
                            assessment.pack(),
                            assessment.standing(),
                            CarriedAs.SPARE,
                            null,
                            charge == null ? null : (Double) charge.value());
                })
                .toList();
        return PackingList.of(packs, 1, List.of(TravelTable.UNITED_STATES, TravelTable.ICAO_IATA), outing.date());
    }

    private RunTimer timer(PlannedRun run) {
        String tag = run.packs().get(0);
        RunTimer made = known.computeIfAbsent(List.of(run.craft(), tag), any -> timer(run, tag));
        return new RunTimer(
                run.run(),
                tag,
                made.settingSeconds(),
                made.typicalSeconds(),
                made.riskFraction(),
                made.binding(),
                made.basis());
    }

    private RunTimer timer(PlannedRun run, String tag) {
        try {
            TimerAnswer answer = TimerAnswer.of(question(run, known(tag)));
            return new RunTimer(
                    run.run(),
                    tag,
                    answer.settingSeconds(),
                    answer.typicalSeconds(),
                    TimerQuestion.USUAL_RISK,
                    answer.binding(),
                    answer.remarks());
        } catch (InputException refused) {
            return new RunTimer(
                    run.run(),
                    tag,
                    0,
                    new Estimate(0, 0, List.of()),
                    TimerQuestion.USUAL_RISK,
                    String.valueOf(refused.getMessage()),
                    List.of());
        }
    }

    private TimerQuestion question(PlannedRun run, KnownPack known) {
        Assessment assessment = known.assessment();
        Pack pack = assessment.pack();
        Craft craft = workshop.craft().find(run.craft()).item();
        PackModel model = PackModel.uniform(
                        pack.tag(),
                        pack.chemistry(),
                        pack.cellsInSeries(),
                        assessment.capacity().plannedCoulombs(),
                        FULL,
                        CellOhms.of(known.history()))
                .at(state.outing().ambientKelvins(), state.outing().ambientKelvins());
        return new TimerQuestion(
                model, workshop.rules().limits(pack), demands(run, craft), craft.peakAmps(), TimerQuestion.USUAL_RISK);
    }

    /** Earlier runs of the craft by what was put back, else what the outing or the craft says of one. */
    private List<RunDemand> demands(PlannedRun run, Craft craft) {
        List<RunDemand> earlier = new ArrayList<>();
        for (String tag : state.outing().packs()) {
            earlier.addAll(RunDemands.of(known(tag).history(), craft.name()));
        }
        if (!earlier.isEmpty()) {
            return earlier;
        }
        RunWish wish = state.outing().runs().stream()
                .filter(named -> named.name().equals(run.run()))
                .findFirst()
                .map(Outing.NamedRun::wish)
                .orElseThrow(() -> new InputException("runs", run.run() + " is no run of this outing any more."));
        Double amps = craft.typicalAmps();
        if (amps == null) {
            throw new InputException(
                    "runs",
                    "no earlier run of " + craft.name() + " says what it draws. Note a run with what was put back, or"
                            + " give the craft its typical current.");
        }
        return List.of(new RunDemand(amps * wish.durationSeconds(), wish.durationSeconds(), List.of()));
    }

    private KnownPack known(String tag) {
        return packs.computeIfAbsent(tag, name -> workshop.review().known(name));
    }
}
