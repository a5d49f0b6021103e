package fettle.planner.solve;

import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.RunWanted;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes a problem ready for searching. */
final class ModelBuilder {
    private static final int ENDLESS = Integer.MAX_VALUE;

    private final OutingProblem problem;
    private final int step;
    private final int ticks;
    private final List<Model.Resource> resources = new ArrayList<>();
    private final Map<String, Integer> index = new HashMap<>();
    private final Map<String, List<Integer>> waysOf = new HashMap<>();
    private final Set<String> excluded = new HashSet<>();

    private ModelBuilder(OutingProblem problem) {
        this.problem = problem;
        step = problem.time().stepMinutes();
        ticks = Ticks.up(problem.time().horizonMinutes(), step);
    }

    static Model of(OutingProblem problem) {
        return new ModelBuilder(problem).build();
    }

    private Model build() {
        for (PlanPort port : problem.means().ports()) {
            add(Model.Kind.PORT, port.name(), 1);
        }
        for (PlanCharger charger : problem.means().chargers()) {
            add(Model.Kind.CHARGER, charger.name(), charger.sharedWatts() == null ? ENDLESS : charger.sharedWatts());
        }
        for (PowerSource source : problem.means().sources()) {
            add(Model.Kind.SOURCE, source.name(), source.limitWatts());
        }
        for (int way = 0; way < problem.means().ways().size(); way++) {
            for (String tag : way(way).packs()) {
                waysOf.computeIfAbsent(tag, unseen -> new ArrayList<>()).add(way);
            }
        }
        exclude();
        boolean[] mandatory = mandatory();
        List<Course> courses = new ArrayList<>();
        for (PlanPack pack : problem.packs()) {
            if (!excluded.contains(pack.tag())) {
                courses.add(new CourseBuilder(this, pack, courses.size(), mandatory).build());
            }
        }
        List<String> crafts =
                problem.runs().stream().map(RunWanted::craft).distinct().toList();
        return new Model(
                problem,
                step,
                ticks,
                resources,
                energies(),
                crafts,
                problem.runs().stream()
                        .mapToInt(run -> crafts.indexOf(run.craft()))
                        .toArray(),
                problem.runs().stream().mapToInt(this::craftTicks).toArray(),
                whole(courses),
                mandatory,
                lockCount(mandatory));
    }

    /** The courses without joint options of which not all packs are offered their part. */
    private static List<Course> whole(List<Course> courses) {
        return courses.stream()
                .map(course -> Course.of(
                        course,
                        course.options().stream()
                                .filter(option -> !option.isJoint() || option.share() == offering(courses, option))
                                .toList()))
                .toList();
    }

    private static int offering(List<Course> courses, Option option) {
        return (int)
                courses.stream().filter(course -> course.offers(option.key())).count();
    }

    private void add(Model.Kind kind, String name, int capacity) {
        int[] capacities = new int[ticks];
        Arrays.fill(capacities, capacity);
        index.put(kind + name, resources.size());
        resources.add(new Model.Resource(kind, name, capacities));
    }

    private void exclude() {
        problem.packs().stream().filter(PlanPack::barred).map(PlanPack::tag).forEach(excluded::add);
        for (Lock lock : problem.locks()) {
            if (lock instanceof Lock.PackNot not) {
                excluded.add(not.pack());
            }
        }
    }

    private boolean[] mandatory() {
        boolean[] mandatory = new boolean[problem.runs().size()];
        for (int run = 0; run < mandatory.length; run++) {
            String name = problem.runs().get(run).name();
            mandatory[run] = problem.locks().stream()
                    .anyMatch(lock -> lock instanceof Lock.RunAt at && at.run().equals(name)
                            || lock instanceof Lock.RunWith with && with.run().equals(name));
        }
        return mandatory;
    }

    private int lockCount(boolean[] mandatory) {
        int count = 0;
        for (boolean demanded : mandatory) {
            count += demanded ? 1 : 0;
        }
        return count
                + (int) problem.locks().stream()
                        .filter(Lock.ChargeAt.class::isInstance)
                        .count();
    }

    private int[] energies() {
        return problem.means().sources().stream()
                .mapToInt(source -> source.energyWattHours() == null ? ENDLESS : source.energyWattHours())
                .toArray();
    }

    private int craftTicks(RunWanted run) {
        return Ticks.up(run.times().duration() + run.times().gapAfter(), step);
    }

    OutingProblem problem() {
        return problem;
    }

    /** Indices of the ways that charge a pack. */
    List<Integer> waysOf(String tag) {
        return waysOf.getOrDefault(tag, List.of());
    }

    ChargeWay way(int index) {
        return problem.means().ways().get(index);
    }

    int stepMinutes() {
        return step;
    }

    int ticks() {
        return ticks;
    }

    boolean isExcluded(String tag) {
        return excluded.contains(tag);
    }

    int resource(Model.Kind kind, String name) {
        return index.get(kind + name);
    }

    int capacity(int resource) {
        return resources.get(resource).capacity()[0];
    }
}
