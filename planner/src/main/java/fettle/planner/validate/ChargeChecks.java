package fettle.planner.validate;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.Plan;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks charges: attended, one a port, within every power limit at every minute and every energy ledger. */
final class ChargeChecks {
    private final OutingProblem problem;
    private final Plan plan;
    private final List<Violation> found;
    private final int horizon;
    private final Map<String, Integer> portUse = new HashMap<>();
    private final Map<String, double[]> power = new HashMap<>();
    private final Map<String, Double> energy = new HashMap<>();

    ChargeChecks(OutingProblem problem, Plan plan, List<Violation> found) {
        this.problem = problem;
        this.plan = plan;
        this.found = found;
        horizon = problem.time().horizonMinutes();
    }

    void check() {
        plan.charges().forEach(this::check);
        for (PlanCharger charger : problem.means().chargers()) {
            if (charger.sharedWatts() != null) {
                power("charger " + charger.name(), charger.sharedWatts());
            }
        }
        for (PowerSource source : problem.means().sources()) {
            power("source " + source.name(), source.limitWatts());
            double used = energy.getOrDefault(source.name(), 0.0);
            if (source.energyWattHours() != null && used > source.energyWattHours() + CurveWalk.SAME) {
                add("energy", source.name() + " gives " + used + " Wh; it holds " + source.energyWattHours() + " Wh.");
            }
        }
    }

    private void check(ChargeJob job) {
        ChargeWay way = problem.means().way(job.way());
        PlanPort port = problem.means().port(way.port());
        PlanCharger charger = problem.means().charger(port.charger());
        PowerSource source = problem.means().source(charger.source());
        CurveWalk walk = new CurveWalk(way.curve(), job.fromFraction(), job.toFraction());
        if (!Set.copyOf(job.packs()).equals(Set.copyOf(way.packs()))
                || !job.port().equals(way.port())) {
            add("way", job.way() + " is for other packs or another port than " + job.packs() + " on " + job.port());
        }
        if (!walk.isPossible()) {
            add("curve", job.way() + " does not go from " + job.fromFraction() + " to " + job.toFraction());
        }
        if (job.endMinute() - job.startMinute() < walk.minutes() - CurveWalk.SAME) {
            add(
                    "duration",
                    job.way() + " takes " + walk.minutes() + " min, planned in "
                            + (job.endMinute() - job.startMinute()));
        }
        place(job, source);
        spend(job, walk, port, charger, source);
    }

    private void place(ChargeJob job, PowerSource source) {
        if (problem.presence().stream()
                .noneMatch(here -> here.place() == source.place()
                        && here.span().fromMinute() <= job.startMinute()
                        && job.endMinute() <= here.span().toMinute())) {
            add("presence", job.way() + " at minute " + job.startMinute() + " is not attended throughout.");
        }
        if (!source.available().isEmpty()
                && source.available().stream()
                        .noneMatch(
                                span -> span.fromMinute() <= job.startMinute() && job.endMinute() <= span.toMinute())) {
            add("source", job.way() + " at minute " + job.startMinute() + " outlasts " + source.name() + ".");
        }
        if (job.startMinute() % problem.time().stepMinutes() != 0 || job.startMinute() < 0) {
            add("step", job.way() + " starts at minute " + job.startMinute() + ", not on a step.");
        }
    }

    private void spend(ChargeJob job, CurveWalk walk, PlanPort port, PlanCharger charger, PowerSource source) {
        for (int minute = job.startMinute(); minute < job.endMinute() && minute < horizon; minute++) {
            if (portUse.merge(port.name() + "@" + minute, 1, Integer::sum) == 2) {
                add("port", port.name() + " has two charges at minute " + minute);
            }
            double watts = walk.watts(minute - job.startMinute());
            if (watts > port.limitWatts() + CurveWalk.SAME) {
                add("port power", port.name() + " gives " + watts + " W at minute " + minute);
            }
            trace("charger " + charger.name())[minute] += watts;
            trace("source " + source.name())[minute] += watts / charger.efficiency();
        }
        energy.merge(source.name(), walk.wattHours() / charger.efficiency(), Double::sum);
    }

    private double[] trace(String name) {
        return power.computeIfAbsent(name, unseen -> new double[horizon]);
    }

    private void power(String name, int limitWatts) {
        double[] trace = trace(name);
        for (int minute = 0; minute < horizon; minute++) {
            if (trace[minute] > limitWatts + CurveWalk.SAME) {
                add("power", name + " gives " + trace[minute] + " W at minute " + minute + "; limit " + limitWatts);
                return;
            }
        }
    }

    private void add(String rule, String sentence) {
        found.add(new Violation(rule, sentence));
    }
}
