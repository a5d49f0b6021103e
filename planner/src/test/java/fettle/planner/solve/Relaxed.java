package fettle.planner.solve;

import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Span;
import java.util.ArrayList;
import java.util.List;

/** The same problem with one limit further away. */
final class Relaxed {
    static final int KINDS = 6;

    private Relaxed() {}

    static OutingProblem of(OutingProblem problem, int kind) {
        OutingProblem.Means means = problem.means();
        return switch (kind) {
            case 0 ->
                problem.with(with(
                        means, means.sources().stream().map(Relaxed::stronger).toList()));
            case 1 ->
                problem.with(with(
                        means, means.sources().stream().map(Relaxed::endless).toList()));
            case 2 -> problem.withPresence(longer(problem.presence()));
            case 3 ->
                problem.withPacks(
                        problem.packs().stream().map(Relaxed::withoutWaits).toList());
            case 4 ->
                problem.withRuns(problem.runs().stream().map(Relaxed::anyTime).toList());
            default ->
                problem.with(new OutingProblem.Means(
                        means.sources(),
                        means.chargers().stream().map(Relaxed::unshared).toList(),
                        means.ports(),
                        means.ways()));
        };
    }

    private static OutingProblem.Means with(OutingProblem.Means means, List<PowerSource> sources) {
        return new OutingProblem.Means(sources, means.chargers(), means.ports(), means.ways());
    }

    private static PowerSource stronger(PowerSource source) {
        return new PowerSource(
                source.name(), source.place(), 2 * source.limitWatts(), source.energyWattHours(), source.available());
    }

    private static PowerSource endless(PowerSource source) {
        return PowerSource.endless(source.name(), source.place(), source.limitWatts());
    }

    private static PlanCharger unshared(PlanCharger charger) {
        return new PlanCharger(charger.name(), charger.source(), null, charger.efficiency());
    }

    private static List<Presence> longer(List<Presence> presence) {
        List<Presence> longer = new ArrayList<>(presence);
        Presence first = presence.get(0);
        Span span = first.span();
        longer.set(0, new Presence(first.place(), new Span(span.fromMinute(), span.toMinute() + 15)));
        return longer;
    }

    private static PlanPack withoutWaits(PlanPack pack) {
        PlanPack.Times times = new PlanPack.Times(0, 0, 0, pack.times().storageByMinute());
        return new PlanPack(
                pack.tag(), pack.standing(), pack.chargeFraction(), pack.levels(), times, pack.fullWeight());
    }

    private static RunWanted anyTime(RunWanted run) {
        RunWanted.Times times = run.times();
        return new RunWanted(
                run.name(),
                run.craft(),
                run.value(),
                new RunWanted.Times(0, 1000, times.duration(), times.gapAfter()),
                run.fits());
    }
}
