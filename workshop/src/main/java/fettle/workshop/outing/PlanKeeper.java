package fettle.workshop.outing;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.GoalReached;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.engine.outing.Spot;
import fettle.engine.units.TradeUnit;
import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.problem.ChargeCurve.Piece;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Goal;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PowerSource;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes a plan down as it is kept: in instants, watts and words. */
public final class PlanKeeper {
    private PlanKeeper() {}

    /** The plan as it is kept. */
    public static KeptPlan keep(PlanningCase made, Plan plan, Instant now) {
        List<String> remarks = new ArrayList<>(made.remarks());
        plan.brokenLocks().forEach(lock -> remarks.add("could not be kept as settled: " + lock + "."));
        return new KeptPlan(
                made.outing().name(),
                now,
                made.clock().from(),
                made.inputs(),
                plan.charges().stream()
                        .sorted(Comparator.comparingInt(ChargeJob::startMinute))
                        .map(job -> charge(made, job))
                        .toList(),
                plan.runs().stream().map(run -> run(made.clock(), run)).toList(),
                plan.goals().stream().map(value -> goal(made, value)).toList(),
                remarks,
                plan.effort().seconds());
    }

    private static PlannedCharge charge(PlanningCase made, ChargeJob job) {
        ChargeWay way = made.problem().means().way(job.way());
        PlanCharger charger = made.problem()
                .means()
                .charger(made.problem().means().port(job.port()).charger());
        PowerSource source = made.problem().means().source(charger.source());
        double most = way.curve().pieces().stream()
                .filter(piece -> piece.highFraction() > job.fromFraction() && piece.lowFraction() < job.toFraction())
                .mapToDouble(Piece::watts)
                .max()
                .orElse(0);
        return new PlannedCharge(
                ChargeNames.of(job.way(), job.target()),
                job.packs(),
                source.place() == Place.HOME ? Spot.HOME : Spot.FIELD,
                job.port(),
                job.target().label(),
                made.clock().at(job.startMinute()),
                made.clock().at(job.endMinute()),
                job.fromFraction(),
                job.toFraction(),
                MeansMaker.bareName(source),
                most / charger.efficiency(),
                TradeUnit.WATT_HOUR.toSi(job.sourceWattHours()));
    }

    private static PlannedRun run(DayClock clock, fettle.planner.plan.PlannedRun run) {
        return new PlannedRun(
                run.run(),
                run.craft(),
                run.packs(),
                clock.at(run.startMinute()),
                clock.at(run.endMinute()),
                clock.at(run.endMinute() + PlanningCases.COOL_MINUTES));
    }

    private static GoalReached goal(PlanningCase made, GoalValue value) {
        return new GoalReached(value.goal().label(), came(made, value), value.provenBest(), value.gapFraction());
    }

    private static String came(PlanningCase made, GoalValue value) {
        long count = value.count();
        if (value.goal() == Goal.EARLIEST_FINISH) {
            return count <= 0
                    ? "nothing to do"
                    : "all done by "
                            + new DayTimes(made.outing().date(), made.outing().zoneId())
                                    .write(made.clock().at((int) count));
        }
        if (value.goal() == Goal.MOST_VALUABLE_RUNS) {
            return value.reachedUnits() + " of " + value.mostUnits() + " in value made";
        }
        if (value.goal() == Goal.FEWEST_HOURS_AT_FULL) {
            return TradeUnit.HOUR.print(count * 60.0, 1) + " weighted pack-hours at full";
        }
        return count == 0
                ? "none: " + value.goal().meaning()
                : count + " " + value.goal().meaning();
    }
}
