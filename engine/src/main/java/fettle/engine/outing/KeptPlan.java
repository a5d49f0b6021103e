package fettle.engine.outing;

import java.time.Instant;
import java.util.List;

/**
 * A plan as it was answered, kept with what it was made from.
 *
 * @param outing the outing's name
 * @param madeAt when it was made
 * @param from the instant it plans from
 * @param inputs what it was made from, a line each: every pack's charge and standing, ports, limits
 * @param charges charges in order
 * @param runs runs in order
 * @param goals what each goal came to, most important first
 * @param remarks what could not be kept or planned, with the reason
 * @param seconds how long the search took [s]
 */
public record KeptPlan(
        String outing,
        Instant madeAt,
        Instant from,
        List<String> inputs,
        List<PlannedCharge> charges,
        List<PlannedRun> runs,
        List<GoalReached> goals,
        List<String> remarks,
        double seconds) {
    public KeptPlan {
        inputs = List.copyOf(inputs);
        charges = List.copyOf(charges);
        runs = List.copyOf(runs);
        goals = List.copyOf(goals);
        remarks = List.copyOf(remarks);
    }

    /**
     * One charge or discharge.
     *
     * @param way name of the way of charging
     * @param packs tags of its packs
     * @param spot where
     * @param port its port, e.g. {@code bench port 1}
     * @param target what it ends at, in words
     * @param begins when it begins
     * @param ends when it ends at the latest
     * @param fromFraction charge it begins at
     * @param toFraction charge it ends at
     * @param source what feeds it
     * @param sourceWatts most power drawn from the source at any moment [W]
     * @param sourceJoules energy drawn from the source [J]
     */
    public record PlannedCharge(
            String way,
            List<String> packs,
            Spot spot,
            String port,
            String target,
            Instant begins,
            Instant ends,
            double fromFraction,
            double toFraction,
            String source,
            double sourceWatts,
            double sourceJoules) {
        public PlannedCharge {
            packs = List.copyOf(packs);
        }
    }

    /**
     * One run.
     *
     * @param run its name, e.g. {@code Harrier 2}
     * @param craft the craft
     * @param packs tags of its packs
     * @param begins when it begins
     * @param ends when it ends
     * @param coolUntil when its packs are cool enough to charge
     */
    public record PlannedRun(
            String run, String craft, List<String> packs, Instant begins, Instant ends, Instant coolUntil) {
        public PlannedRun {
            packs = List.copyOf(packs);
        }
    }

    /**
     * What a goal came to.
     *
     * @param goal the goal in words
     * @param came what it came to, in words with a figure
     * @param proven whether no plan is better without being worse in a goal before
     * @param gapFraction how much better the best may be, as a share; 0 where proven
     */
    public record GoalReached(String goal, String came, boolean proven, double gapFraction) {}

    /** Whether every goal is proven best. */
    public boolean provenBest() {
        return goals.stream().allMatch(GoalReached::proven);
    }
}
