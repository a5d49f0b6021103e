package fettle.planner.problem;

import fettle.engine.units.Faults;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds everything wrong with a problem before it is planned. */
final class ProblemFaults {
    private static final int LONGEST_MINUTES = 7 * 24 * 60;

    private final Faults faults = new Faults();

    private ProblemFaults() {}

    static void refuse(
            OutingProblem.Time time,
            List<Presence> presence,
            OutingProblem.Means means,
            List<PlanPack> packs,
            List<RunWanted> runs,
            List<Lock> locks,
            List<GoalSetting> goals) {
        ProblemFaults found = new ProblemFaults();
        found.checkTime(time, presence);
        Set<String> tags = found.names("packs", "pack", packs, PlanPack::tag);
        found.checkMeans(means, tags);
        packs.forEach(found::checkPack);
        Set<String> wanted = found.names("runs", "run", runs, RunWanted::name);
        runs.forEach(run -> found.checkRun(run, tags));
        new LockFaults(found.faults, time, means, runs).check(locks, tags, wanted);
        found.checkGoals(goals);
        found.faults.refuse();
    }

    private void checkTime(OutingProblem.Time time, List<Presence> presence) {
        if (time.horizonMinutes() < 1 || time.horizonMinutes() > LONGEST_MINUTES) {
            faults.add(
                    "horizon",
                    "the plan covers " + time.horizonMinutes() + " min; expected 1 to " + LONGEST_MINUTES
                            + " min. Plan a week at most.");
        }
        if (time.stepMinutes() < 1 || time.stepMinutes() > 60) {
            faults.add("step", "the step is " + time.stepMinutes() + " min; expected 1 to 60 min. Five is usual.");
        }
        for (Presence here : presence) {
            if (here.span().fromMinute() < 0 || here.span().toMinute() > time.horizonMinutes()) {
                faults.add(
                        "presence",
                        "presence from minute " + here.span().fromMinute() + " to "
                                + here.span().toMinute() + " lies outside the plan; expected 0 to "
                                + time.horizonMinutes()
                                + ". Plan a longer time or shorten it.");
            }
        }
    }

    private void checkMeans(OutingProblem.Means means, Set<String> tags) {
        Set<String> sources = names("sources", "source", means.sources(), PowerSource::name);
        Set<String> chargers = names("chargers", "charger", means.chargers(), PlanCharger::name);
        Set<String> ports = names("ports", "port", means.ports(), PlanPort::name);
        names("ways", "way to charge", means.ways(), ChargeWay::name);
        means.sources().forEach(this::checkSource);
        for (PlanCharger charger : means.chargers()) {
            known("chargers", charger.name() + " is fed by", charger.source(), sources);
            if (!(charger.efficiency() > 0 && charger.efficiency() <= 1)) {
                faults.add(
                        "chargers",
                        charger.name() + ": efficiency is " + charger.efficiency()
                                + "; expected above 0 to 1. See its maker's sheet.");
            }
            if (charger.sharedWatts() != null) {
                positive("chargers", charger.name() + ": shared power", charger.sharedWatts(), "W");
            }
        }
        for (PlanPort port : means.ports()) {
            known("ports", port.name() + " belongs to", port.charger(), chargers);
            positive("ports", port.name() + ": power", port.limitWatts(), "W");
        }
        for (ChargeWay way : means.ways()) {
            known("ways", way.name() + " uses", way.port(), ports);
            way.packs().forEach(tag -> known("ways", way.name() + " charges", tag, tags));
            CurveFaults.check(way, faults);
        }
    }

    private void checkSource(PowerSource source) {
        positive("sources", source.name() + ": power", source.limitWatts(), "W");
        if (source.energyWattHours() != null && source.energyWattHours() < 0) {
            faults.add(
                    "sources",
                    source.name() + ": energy is " + source.energyWattHours()
                            + " Wh; expected 0 Wh or more. Leave it empty where it does not run out.");
        }
    }

    private void checkPack(PlanPack pack) {
        fraction(pack.tag() + ": charge", pack.chargeFraction());
        PlanPack.Levels levels = pack.levels();
        boolean ordered = levels.reserveFraction() >= 0
                && levels.storageLow() <= levels.storageTarget()
                && levels.storageTarget() <= levels.storageHigh()
                && levels.storageHigh() < levels.fullFraction()
                && levels.fullFraction() <= 1;
        if (!ordered) {
            faults.add(
                    "packs",
                    pack.tag() + ": storage " + levels.storageLow() + " to " + levels.storageHigh()
                            + ", full " + levels.fullFraction()
                            + " are out of order; expected low ≤ target ≤ high < full ≤ 1.");
        }
        PlanPack.Times times = pack.times();
        if (Math.min(times.restMinutes(), times.coolMinutes()) < 0 || pack.fullWeight() < 0) {
            faults.add("packs", pack.tag() + ": a wait or weight is below 0; expected 0 or more.");
        }
    }

    private void checkRun(RunWanted run, Set<String> tags) {
        positive("runs", run.name() + ": value", run.value(), "");
        positive("runs", run.name() + ": duration", run.times().duration(), "min");
        if (run.times().latestStart() < run.times().earliestStart()
                || run.times().gapAfter() < 0) {
            faults.add(
                    "runs",
                    run.name() + " may start from minute " + run.times().earliestStart() + " to "
                            + run.times().latestStart()
                            + "; expected the latest not before the earliest, and a gap of 0 or more.");
        }
        for (PackSet set : run.fits()) {
            if (set.takes().isEmpty()
                    || new HashSet<>(set.tags()).size() < set.takes().size()) {
                faults.add(
                        "runs",
                        run.name() + " has a set that is empty or names a pack twice; one pack cannot be in"
                                + " two places. Name each pack once.");
            }
            for (PackSet.Take take : set.takes()) {
                known("runs", run.name() + " uses", take.pack(), tags);
                if (!(take.fraction() > 0 && take.fraction() <= 1)) {
                    faults.add(
                            "runs",
                            run.name() + " takes " + take.fraction() + " from " + take.pack()
                                    + "; expected a fraction above 0, to 1 for the whole pack.");
                }
            }
        }
    }

    private void checkGoals(List<GoalSetting> goals) {
        Set<Goal> seen = goals.stream().map(GoalSetting::goal).collect(Collectors.toSet());
        if (goals.isEmpty() || seen.size() < goals.size()) {
            faults.add("goals", "goals are missing or named twice; expected each at most once, at least one.");
        }
        goals.forEach(setting -> positive("goals", setting.goal().label() + ": resolution", setting.resolution(), ""));
    }

    private <T> Set<String> names(String field, String what, List<T> things, Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        for (T thing : things) {
            if (!seen.add(name.apply(thing))) {
                faults.add(
                        field,
                        what + " " + name.apply(thing) + " is there twice; expected each name once. Rename one.");
            }
        }
        return seen;
    }

    private void known(String field, String what, String name, Set<String> names) {
        if (!names.contains(name)) {
            faults.add(field, what + " " + name + ", which is not there. Add it or name another.");
        }
    }

    private void positive(String field, String what, int value, String unit) {
        if (value < 1) {
            faults.add(
                    field,
                    what + " is " + value + (unit.isEmpty() ? "" : " " + unit)
                            + "; expected 1 or more. Leave out what gives nothing.");
        }
    }

    private void fraction(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            faults.add("packs", what + " is " + value + "; expected a fraction, 0 for empty to 1 for full.");
        }
    }
}
