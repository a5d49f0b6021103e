package fettle.planner.solve;

import fettle.planner.plan.ChargeJob;
import fettle.planner.plan.PlannedRun;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns the days of a board into charges and runs with names and minutes. */
final class PlanWriter {
    private final Model model;
    private final List<ChargeJob> charges = new ArrayList<>();
    private final List<PlannedRun> runs = new ArrayList<>();
    private final Map<Item.Shared, List<String>> tags = new LinkedHashMap<>();

    PlanWriter(Model model, List<Day> days) {
        this.model = model;
        for (Day day : days) {
            for (Item item : day.items()) {
                tags.computeIfAbsent(item.shared(), shared -> new ArrayList<>())
                        .add(day.course().pack().tag());
            }
        }
        Set<Item.Shared> written = new HashSet<>();
        for (Day day : days) {
            for (Item item : day.items()) {
                if (!item.option().isJoint() || written.add(item.shared())) {
                    write(day, item);
                }
            }
        }
        charges.sort(Comparator.comparingInt(ChargeJob::startMinute).thenComparing(ChargeJob::port));
        runs.sort(Comparator.comparingInt(PlannedRun::startMinute).thenComparing(PlannedRun::run));
    }

    List<ChargeJob> charges() {
        return charges;
    }

    List<PlannedRun> runs() {
        return runs;
    }

    private void write(Day day, Item item) {
        Option option = item.option();
        List<String> packs = option.isJoint()
                ? tags.getOrDefault(item.shared(), List.of())
                : List.of(day.course().pack().tag());
        int start = item.tick() * model.stepMinutes();
        OutingProblem problem = model.problem();
        if (option.isRun()) {
            RunWanted run = problem.runs().get(option.run());
            runs.add(new PlannedRun(run.name(), run.craft(), packs, start, start + option.minutes()));
        } else {
            ChargeWay way = problem.means().ways().get(item.port().way());
            double from = option.isJoint()
                    ? option.key().fromFraction()
                    : day.course().levels().get(option.from()).fraction();
            Level to = day.course().levels().get(option.to());
            charges.add(new ChargeJob(
                    way.name(),
                    packs,
                    way.port(),
                    to.stored() ? Target.STORAGE : Target.FULL,
                    start,
                    start + option.minutes(),
                    from,
                    to.fraction(),
                    option.wattHours()));
        }
    }
}
