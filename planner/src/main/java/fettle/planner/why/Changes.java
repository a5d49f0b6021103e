package fettle.planner.why;

import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Single changes of a day, by size. Waits, reserves and standings are limits of safety and never among them. */
final class Changes {
    private static final int[] MINUTES = {15, 30, 60, 120};
    private static final int[] PERCENT = {10, 25, 50, 100};

    private final OutingProblem problem;
    private final MinuteText text;

    Changes(OutingProblem problem, MinuteText text) {
        this.problem = problem;
        this.text = text;
    }

    /** All changes, the smallest first: more time and power by steps, then a port more, then a pack charged before. */
    List<Change> bySize() {
        List<Change> changes = new ArrayList<>();
        for (int size = 0; size < MINUTES.length; size++) {
            addTime(changes, MINUTES[size]);
            addPower(changes, PERCENT[size]);
        }
        problem.means().ports().forEach(port -> changes.add(onePortMore(port)));
        problem.packs().forEach(pack -> addFull(changes, pack));
        return changes;
    }

    private void addTime(List<Change> changes, int minutes) {
        for (int i = 0; i < problem.presence().size(); i++) {
            addLonger(changes, i, minutes);
        }
        for (RunWanted run : problem.runs()) {
            RunWanted.Times times = run.times();
            int latest = times.latestStart() + minutes;
            RunWanted later = new RunWanted(
                    run.name(),
                    run.craft(),
                    run.value(),
                    new RunWanted.Times(times.earliestStart(), latest, times.duration(), times.gapAfter()),
                    run.fits());
            List<RunWanted> runs = new ArrayList<>(problem.runs());
            runs.set(problem.runs().indexOf(run), later);
            changes.add(new Change(
                    "the latest start of " + run.name(),
                    "let " + run.name() + " start until " + text.at(latest) + ", " + minutes + " min later",
                    problem.withRuns(runs)));
        }
    }

    private void addLonger(List<Change> changes, int index, int minutes) {
        Presence here = problem.presence().get(index);
        int before = index == 0 ? 0 : problem.presence().get(index - 1).span().toMinute();
        int after = index + 1 < problem.presence().size()
                ? problem.presence().get(index + 1).span().fromMinute()
                : problem.time().horizonMinutes();
        int until = here.span().toMinute() + minutes;
        int from = here.span().fromMinute() - minutes;
        String limit = "the time at " + here.place().label();
        if (until <= after) {
            String sentence =
                    "stay at " + here.place().label() + " until " + text.at(until) + ", " + minutes + " min longer";
            changes.add(
                    new Change(limit, sentence, with(index, new Span(here.span().fromMinute(), until))));
        }
        if (from >= before) {
            String sentence =
                    "be at " + here.place().label() + " from " + text.at(from) + ", " + minutes + " min sooner";
            changes.add(new Change(
                    limit, sentence, with(index, new Span(from, here.span().toMinute()))));
        }
    }

    private OutingProblem with(int index, Span span) {
        List<Presence> presence = new ArrayList<>(problem.presence());
        presence.set(index, new Presence(presence.get(index).place(), span));
        return problem.withPresence(presence);
    }

    private void addPower(List<Change> changes, int percent) {
        for (PowerSource source : problem.means().sources()) {
            int watts = more(source.limitWatts(), percent);
            changes.add(new Change(
                    "the power of " + source.name(),
                    "a source of " + watts + " W instead of " + source.name() + " with " + source.limitWatts() + " W",
                    with(
                            source,
                            new PowerSource(
                                    source.name(),
                                    source.place(),
                                    watts,
                                    source.energyWattHours(),
                                    source.available()))));
            Integer energy = source.energyWattHours();
            if (energy != null) {
                int wattHours = more(Math.max(10, energy), percent);
                changes.add(new Change(
                        "the energy of " + source.name(),
                        wattHours + " Wh in " + source.name() + " instead of " + energy + " Wh",
                        with(
                                source,
                                new PowerSource(
                                        source.name(),
                                        source.place(),
                                        source.limitWatts(),
                                        wattHours,
                                        source.available()))));
            }
        }
    }

    private static int more(int value, int percent) {
        return (int) Math.ceil(value * (1 + percent / 100.0));
    }

    private OutingProblem with(PowerSource source, PowerSource other) {
        OutingProblem.Means means = problem.means();
        List<PowerSource> sources = new ArrayList<>(means.sources());
        sources.set(means.sources().indexOf(source), other);
        return problem.with(new OutingProblem.Means(sources, means.chargers(), means.ports(), means.ways()));
    }

    private Change onePortMore(PlanPort port) {
        OutingProblem.Means means = problem.means();
        String name = port.name() + " (one more)";
        List<PlanPort> ports = new ArrayList<>(means.ports());
        ports.add(new PlanPort(name, port.charger(), port.limitWatts()));
        List<ChargeWay> ways = new ArrayList<>(means.ways());
        means.ways().stream()
                .filter(way -> way.port().equals(port.name()))
                .map(way -> new ChargeWay(
                        way.name() + " (one more)",
                        way.packs(),
                        name,
                        way.amps(),
                        way.curve(),
                        way.stress(),
                        way.alikeWithin()))
                .forEach(ways::add);
        return new Change(
                "the number of ports",
                "one port more like " + port.name(),
                problem.with(new OutingProblem.Means(means.sources(), means.chargers(), ports, ways)));
    }

    private void addFull(List<Change> changes, PlanPack pack) {
        double full = pack.levels().fullFraction();
        if (!pack.barred() && pack.chargeFraction() < full) {
            PlanPack charged =
                    new PlanPack(pack.tag(), pack.standing(), full, pack.levels(), pack.times(), pack.fullWeight());
            List<PlanPack> packs = new ArrayList<>(problem.packs());
            int at = IntStream.range(0, packs.size())
                    .filter(i -> packs.get(i).tag().equals(pack.tag()))
                    .findFirst()
                    .orElseThrow();
            packs.set(at, charged);
            changes.add(new Change(
                    "the charge of " + pack.tag(), "charge " + pack.tag() + " before", problem.withPacks(packs)));
        }
    }
}
