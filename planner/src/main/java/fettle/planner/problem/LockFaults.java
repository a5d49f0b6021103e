package fettle.planner.problem;

import fettle.engine.units.Faults;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds locks that name what is not there, lie off the step or contradict each other. */
final class LockFaults {
    private final Faults faults;
    private final OutingProblem.Time time;
    private final Set<String> ways;
    private final List<RunWanted> runs;
    private final Set<String> claimed = new HashSet<>();

    LockFaults(Faults faults, OutingProblem.Time time, OutingProblem.Means means, List<RunWanted> runs) {
        this.faults = faults;
        this.time = time;
        this.runs = runs;
        ways = means.ways().stream().map(ChargeWay::name).collect(Collectors.toSet());
    }

    void check(List<Lock> locks, Set<String> tags, Set<String> wanted) {
        for (Lock lock : locks) {
            if (lock instanceof Lock.RunWith with) {
                once(lock, "packs of " + with.run(), known(with.run(), wanted) && fits(with));
            } else if (lock instanceof Lock.RunAt at) {
                once(lock, "time of " + at.run(), known(at.run(), wanted) && onStep(at.startMinute(), lock));
            } else if (lock instanceof Lock.RunNot not) {
                once(lock, "leaving out of " + not.run(), known(not.run(), wanted));
            } else if (lock instanceof Lock.ChargeAt at) {
                once(lock, at.label(), known(at.way(), ways) && onStep(at.startMinute(), lock));
            } else if (lock instanceof Lock.PackNot not) {
                once(lock, "leaving out of " + not.pack(), known(not.pack(), tags));
            }
        }
    }

    private void once(Lock lock, String claim, boolean sound) {
        if (sound && !claimed.add(claim)) {
            faults.add("locks", lock.label() + ": the " + claim + " is locked twice. Keep one of the locks.");
        }
    }

    private boolean known(String name, Set<String> names) {
        if (!names.contains(name)) {
            faults.add("locks", "a lock names " + name + ", which is not there. Remove the lock.");
        }
        return names.contains(name);
    }

    private boolean fits(Lock.RunWith with) {
        Set<String> packs = Set.copyOf(with.packs());
        boolean fits = runs.stream()
                .filter(run -> run.name().equals(with.run()))
                .flatMap(run -> run.fits().stream())
                .anyMatch(set -> Set.copyOf(set.tags()).equals(packs));
        if (!fits) {
            faults.add("locks", with.label() + " is locked, but those packs do not fit it. Choose packs that fit.");
        }
        return fits;
    }

    private boolean onStep(int minute, Lock lock) {
        boolean on = minute >= 0 && minute % time.stepMinutes() == 0;
        if (!on) {
            faults.add(
                    "locks",
                    lock.label() + " is not on the plan's step; expected a multiple of " + time.stepMinutes()
                            + " min from its start.");
        }
        return on;
    }
}
