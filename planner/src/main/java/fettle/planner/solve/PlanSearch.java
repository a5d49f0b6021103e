package fettle.planner.solve;

import fettle.planner.plan.GoalValue;
import fettle.planner.plan.Plan;
import fettle.planner.plan.SearchEffort;
import fettle.planner.problem.GoalSetting;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** One search, from the first plan to the last. */
final class PlanSearch {
    private static final double SECONDS_BETWEEN_WORDS = 0.2;
    private static final int LOOK_STEPS = 150;

    /** Pause of the bounding thread while no bound can be raised [ns]. */
    private static final long WAIT_NANOS = 2_000_000;

    /** Trying everything may take this share of the time, and at most so long [s]. */
    private static final double TRY_SHARE = 0.25;

    private static final double TRY_SECONDS = 1;

    /** Trying everything is given as many tries as so many rounds are worth. */
    private static final long TRIES_A_ROUND = 5000;

    private static final long MOST_ROUNDS_TRYING = 200;

    private final Model model;
    private final Effort effort;
    private final PlanProgress progress;
    private final long began = System.nanoTime();
    private final Bounds bounds;
    private final Improver improver;
    private final Bounder bounder;
    private volatile long[] reached;
    private volatile boolean stopped;
    private int looked = -1;

    PlanSearch(Model model, Effort effort, PlanProgress progress, long seed) {
        this.model = model;
        this.effort = effort;
        this.progress = progress;
        Rows rows = new Rows(model);
        bounds = new Bounds(model);
        improver = new Improver(model, rows, bounds, seed);
        bounder = new Bounder(model, rows, bounds);
        reached = improver.bestCounts();
    }

    Plan run() {
        boolean goOn = progress.goOn(plan(false));
        Thread beside = new Thread(this::bound, "bounds");
        beside.setDaemon(true);
        if (effort.threads() > 1 && goOn) {
            beside.start();
        }
        if (goOn && effort.rounds() > 0) {
            tryAll();
        }
        double spoke = seconds();
        long round = 0;
        while (goOn && round < effort.rounds() && seconds() < effort.seconds() && !bounds.areProven(reached)) {
            boolean better = improve();
            if (effort.threads() == 1) {
                bounder.step(reached);
            }
            if (better || seconds() - spoke > SECONDS_BETWEEN_WORDS) {
                spoke = seconds();
                goOn = progress.goOn(plan(false));
            }
            round++;
        }
        stopped = true;
        return plan(!goOn);
    }

    /** Small problems are settled at once. */
    private void tryAll() {
        double until = effort.threads() == 1 ? effort.seconds() : Math.min(TRY_SECONDS, TRY_SHARE * effort.seconds());
        BooleanSupplier late = () -> seconds() > until;
        long tries = TRIES_A_ROUND * Math.min(MOST_ROUNDS_TRYING, effort.rounds());
        ExactSearch.best(model, improver.best(), improver.bestCounts(), tries, late)
                .ifPresent(found -> {
                    improver.take(found.days(), found.counts());
                    reached = found.counts();
                    bounds.settle(found.counts());
                });
    }

    private void bound() {
        while (!stopped) {
            if (!bounder.step(reached)) {
                LockSupport.parkNanos(WAIT_NANOS);
            }
        }
    }

    private boolean improve() {
        if (improver.isDoneLooking()) {
            improver.lookAt(nextLook(), LOOK_STEPS);
        }
        boolean better = improver.step();
        if (better) {
            reached = improver.bestCounts();
        }
        return better;
    }

    /** The next goal that is not proven best; again the first after the last. */
    private int nextLook() {
        int goals = model.problem().goals().size();
        for (int tried = 0; tried < goals; tried++) {
            looked = (looked + 1) % goals;
            if (!bounds.isProven(looked, reached)) {
                return looked;
            }
        }
        return 0;
    }

    private double seconds() {
        return (System.nanoTime() - began) * 1e-9;
    }

    private Plan plan(boolean cancelled) {
        PlanWriter written = new PlanWriter(model, improver.best());
        long[] counts = improver.bestCounts();
        List<GoalValue> values = new ArrayList<>();
        for (int place = 0; place < model.problem().goals().size(); place++) {
            GoalSetting setting = model.problem().goals().get(place);
            int count = Count.of(setting.goal());
            long most = count == Count.VALUE ? setting.units(model.totalValue()) : 0;
            long units = setting.units(counts[count]);
            long bound = Math.min(units, bounds.units(place, counts));
            values.add(new GoalValue(setting.goal(), counts[count], units, bound, most));
        }
        return new Plan(
                written.charges(),
                written.runs(),
                values,
                BrokenLocks.of(model.problem().locks(), written.charges(), written.runs()),
                new SearchEffort(seconds(), improver.tried(), bounder.steps(), cancelled));
    }
}
