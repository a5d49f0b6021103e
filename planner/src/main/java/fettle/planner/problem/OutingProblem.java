package fettle.planner.problem;

import fettle.engine.units.InputException;
import java.util.List;

/**
 * Everything a plan is made from. Immutable; checked as a whole.
 *
 * <p>Charges and runs start at whole multiples of the step. A charge lies within one stretch of presence at its place, a run
 * within one at the field. A pack is used at most once between charges.
 *
 * @param time the time it covers
 * @param presence who is where, merged and in order
 * @param means what feeds and charges
 * @param packs the packs
 * @param runs the runs wanted
 * @param locks what must stay
 * @param goals the goals, most important first
 */
public record OutingProblem(
        Time time,
        List<Presence> presence,
        Means means,
        List<PlanPack> packs,
        List<RunWanted> runs,
        List<Lock> locks,
        List<GoalSetting> goals) {
    /**
     * @throws InputException naming every fault
     */
    public OutingProblem {
        presence = Presence.merged(presence);
        packs = List.copyOf(packs);
        runs = List.copyOf(runs);
        locks = List.copyOf(locks);
        goals = List.copyOf(goals);
        ProblemFaults.refuse(time, presence, means, packs, runs, locks, goals);
    }

    /**
     * The time a problem covers.
     *
     * @param horizonMinutes its length [min]
     * @param stepMinutes starts lie on multiples of this [min], 1 to 60
     */
    public record Time(int horizonMinutes, int stepMinutes) {}

    /**
     * What feeds and charges.
     *
     * @param sources the sources
     * @param chargers the chargers
     * @param ports their outputs
     * @param ways how packs can be charged
     */
    public record Means(
            List<PowerSource> sources, List<PlanCharger> chargers, List<PlanPort> ports, List<ChargeWay> ways) {
        public Means {
            sources = List.copyOf(sources);
            chargers = List.copyOf(chargers);
            ports = List.copyOf(ports);
            ways = List.copyOf(ways);
        }

        public PlanPort port(String name) {
            return ports.stream()
                    .filter(port -> port.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        public PlanCharger charger(String name) {
            return chargers.stream()
                    .filter(unit -> unit.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        public PowerSource source(String name) {
            return sources.stream()
                    .filter(source -> source.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        public ChargeWay way(String name) {
            return ways.stream()
                    .filter(way -> way.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }
    }

    public OutingProblem with(Means other) {
        return new OutingProblem(time, presence, other, packs, runs, locks, goals);
    }

    public OutingProblem withPresence(List<Presence> other) {
        return new OutingProblem(time, other, means, packs, runs, locks, goals);
    }

    public OutingProblem withPacks(List<PlanPack> other) {
        return new OutingProblem(time, presence, means, other, runs, locks, goals);
    }

    public OutingProblem withRuns(List<RunWanted> other) {
        return new OutingProblem(time, presence, means, packs, other, locks, goals);
    }

    public OutingProblem withLocks(List<Lock> other) {
        return new OutingProblem(time, presence, means, packs, runs, other, goals);
    }

    public OutingProblem withGoals(List<GoalSetting> other) {
        return new OutingProblem(time, presence, means, packs, runs, locks, other);
    }
}
