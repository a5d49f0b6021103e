package fettle.planner.solve;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.Lock;
import java.util.List;

/** Locks a plan does not keep. Leaving something out is always kept. */
final class BrokenLocks {
    private BrokenLocks() {}

    static List<String> of(List<Lock> locks, List<ChargeJob> charges, List<PlannedRun> runs) {
        return locks.stream()
                .filter(lock -> isBroken(lock, charges, runs))
                .map(Lock::label)
                .toList();
    }

    private static boolean isBroken(Lock lock, List<ChargeJob> charges, List<PlannedRun> runs) {
        if (lock instanceof Lock.RunWith with) {
            return runs.stream().noneMatch(run -> run.run().equals(with.run()));
        } else if (lock instanceof Lock.RunAt at) {
            return runs.stream().noneMatch(run -> run.run().equals(at.run()));
        }
        return lock instanceof Lock.ChargeAt at
                && charges.stream()
                        .noneMatch(job -> job.way().equals(at.way())
                                && job.startMinute() == at.startMinute()
                                && job.target() == at.target());
    }
}
