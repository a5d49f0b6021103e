package fettle.bench.outing;

import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/**
 * The same evening for a general-purpose constraint solver: value of runs first, then minutes at full. Storage afterwards is left
 * out, which only makes it easier. Charges at home alone.
 */
final class GeneralSolver {
    private final OutingProblem problem;
    private final int step;
    private final Model model = new Model();
    private final List<IntVar> chargeStarts = new ArrayList<>();
    private final List<BoolVar[]> rates = new ArrayList<>();
    private final List<Task> portTasks = new ArrayList<>();
    private final List<IntVar> portHeights = new ArrayList<>();
    private final List<Task> powerTasks = new ArrayList<>();
    private final List<IntVar> powerHeights = new ArrayList<>();
    private final List<IntVar> ends = new ArrayList<>();
    private final BoolVar[][] flies;
    private final IntVar[] runStarts;
    private final IntVar lostValue;
    private final IntVar fullMinutes;

    /**
     * What it came to.
     *
     * @param lostValue value of runs left out; −1 if no plan was found
     * @param fullMinutes minutes at full; −1 if none was found
     * @param proven whether both were proven best
     */
    record Outcome(long lostValue, long fullMinutes, boolean proven) {}

    GeneralSolver(OutingProblem problem) {
        this.problem = problem;
        step = problem.time().stepMinutes();
        flies = model.boolVarMatrix(problem.packs().size(), problem.runs().size());
        runStarts = problem.runs().stream().map(this::runStart).toArray(IntVar[]::new);
        for (PlanPack pack : problem.packs()) {
            addPack(pack);
        }
        limits();
        addRuns();
        lostValue = lostValue();
        fullMinutes = fullMinutes();
    }

    Outcome solve(double seconds) {
        Solver solver = model.getSolver();
        search(solver);
        long lost = best(solver, lostValue, seconds / 2);
        boolean first = solver.isObjectiveOptimal();
        if (lost < 0) {
            return new Outcome(-1, -1, false);
        }
        solver.reset();
        model.clearObjective();
        model.arithm(lostValue, "<=", (int) lost).post();
        search(solver);
        long full = best(solver, fullMinutes, seconds / 2);
        return new Outcome(lost, full, first && solver.isObjectiveOptimal());
    }

    /** First who flies what, the dearest runs first, then slow charges, then early runs and late charges; restarts by its own rule. */
    private void search(Solver solver) {
        List<Integer> dearest = IntStream.range(0, runStarts.length)
                .boxed()
                .sorted(Comparator.comparingInt(run -> -problem.runs().get(run).value()))
                .toList();
        BoolVar[] choices =
                dearest.stream().flatMap(run -> Arrays.stream(column(run))).toArray(BoolVar[]::new);
        solver.setSearch(
                Search.inputOrderUBSearch(choices),
                Search.inputOrderUBSearch(rates.stream().flatMap(Arrays::stream).toArray(BoolVar[]::new)),
                Search.minDomLBSearch(runStarts),
                Search.minDomUBSearch(chargeStarts.toArray(IntVar[]::new)));
    }

    private long best(Solver solver, IntVar goal, double seconds) {
        model.setObjective(Model.MINIMIZE, goal);
        solver.limitTime((long) (1000 * seconds));
        long best = -1;
        while (solver.solve()) {
            best = goal.getValue();
        }
        return best;
    }

    private IntVar runStart(RunWanted run) {
        return model.intVar(up(run.times().earliestStart()), run.times().latestStart() / step);
    }

    private int up(int minutes) {
        return (minutes + step - 1) / step;
    }

    private void addPack(PlanPack pack) {
        List<Charge> charges = problem.means().ways().stream()
                .filter(way -> way.packs().contains(pack.tag())
                        && way.curve().direction() == Direction.FILLING
                        && way.port().equals(problem.means().ports().get(0).name()))
                .map(way -> Charge.of(problem, way, pack.chargeFraction(), 1))
                .toList();
        IntVar start = model.intVar(starts());
        BoolVar[] rate = model.boolVarArray(charges.size());
        model.sum(rate, "<=", 1).post();
        IntVar end = model.intVar(0, problem.time().horizonMinutes());
        for (int i = 0; i < rate.length; i++) {
            addCharge(charges.get(i), start, rate[i], end);
        }
        chargeStarts.add(start);
        rates.add(rate);
        ends.add(end);
    }

    private int[] starts() {
        return problem.presence().stream()
                .filter(here -> here.place() == Place.HOME && here.span().fromMinute() < 15 * 60)
                .flatMapToInt(here -> IntStream.range(
                        here.span().fromMinute() / step, here.span().toMinute() / step))
                .toArray();
    }

    private void addCharge(Charge charge, IntVar start, BoolVar chosen, IntVar end) {
        int[] allowed = Arrays.stream(starts())
                .filter(at -> problem.presence().stream()
                        .map(Presence::span)
                        .anyMatch(span -> span.covers(at * step, at * step + charge.minutes())))
                .toArray();
        model.ifThen(chosen, model.member(start, allowed));
        model.ifThen(chosen, model.arithm(end, "=", model.intAffineView(step, start, charge.minutes())));
        portTasks.add(model.taskVar(start, charge.steps()));
        portHeights.add(chosen);
        int began = 0;
        for (int at = 1; at <= charge.steps(); at++) {
            if (at == charge.steps() || charge.sourceWatts()[at] != charge.sourceWatts()[began]) {
                powerTasks.add(model.taskVar(model.intAffineView(1, start, began), at - began));
                powerHeights.add(model.intAffineView(charge.sourceWatts()[began], chosen, 0));
                began = at;
            }
        }
    }

    private void limits() {
        int ports = (int) problem.means().ports().stream()
                .filter(port -> port.charger().equals("bench"))
                .count();
        model.cumulative(portTasks.toArray(Task[]::new), portHeights.toArray(IntVar[]::new), model.intVar(ports))
                .post();
        int watts = problem.means().source("supply").limitWatts();
        model.cumulative(powerTasks.toArray(Task[]::new), powerHeights.toArray(IntVar[]::new), model.intVar(watts))
                .post();
    }

    private void addRuns() {
        for (int p = 0; p < flies.length; p++) {
            PlanPack pack = problem.packs().get(p);
            model.sum(flies[p], "<=", 1).post();
            model.sum(flies[p], "=", model.intScaleView(charged(p), 1)).post();
            for (int r = 0; r < flies[p].length; r++) {
                boolean fits = problem.runs().get(r).fits().stream()
                        .anyMatch(set -> set.tags().contains(pack.tag()));
                if (!fits) {
                    flies[p][r].eq(0).post();
                }
                IntVar ready = model.intAffineView(1, ends.get(p), pack.times().restMinutes());
                model.ifThen(flies[p][r], model.arithm(model.intScaleView(runStarts[r], step), ">=", ready));
            }
        }
        for (int r = 0; r < runStarts.length; r++) {
            model.sum(column(r), "<=", 1).post();
            for (int other = 0; other < r; other++) {
                apart(r, other);
            }
        }
    }

    private BoolVar charged(int pack) {
        BoolVar charged = model.boolVar();
        model.sum(rates.get(pack), "=", charged).post();
        return charged;
    }

    private void apart(int one, int other) {
        RunWanted run = problem.runs().get(one);
        if (run.craft().equals(problem.runs().get(other).craft())) {
            int length = up(run.times().duration() + run.times().gapAfter());
            BoolVar both = made(one).and(made(other)).boolVar();
            model.ifThen(both, model.distance(runStarts[one], runStarts[other], ">", length - 1));
        }
    }

    private BoolVar made(int run) {
        BoolVar made = model.boolVar();
        model.sum(column(run), "=", made).post();
        return made;
    }

    private BoolVar[] column(int run) {
        BoolVar[] column = new BoolVar[flies.length];
        for (int p = 0; p < column.length; p++) {
            column[p] = flies[p][run];
        }
        return column;
    }

    private IntVar lostValue() {
        int total = problem.runs().stream().mapToInt(RunWanted::value).sum();
        List<BoolVar> made = new ArrayList<>();
        List<Integer> values = new ArrayList<>();
        for (BoolVar[] row : flies) {
            for (int r = 0; r < row.length; r++) {
                made.add(row[r]);
                values.add(problem.runs().get(r).value());
            }
        }
        IntVar value = model.intVar(0, total);
        model.scalar(
                        made.toArray(IntVar[]::new),
                        values.stream().mapToInt(Integer::intValue).toArray(),
                        "=",
                        value)
                .post();
        return model.intAffineView(-1, value, total);
    }

    private IntVar fullMinutes() {
        int horizon = problem.time().horizonMinutes();
        IntVar[] waits = new IntVar[flies.length];
        for (int p = 0; p < waits.length; p++) {
            waits[p] = model.intVar(0, horizon);
            for (int r = 0; r < runStarts.length; r++) {
                model.ifThen(
                        flies[p][r],
                        model.arithm(waits[p], "=", model.intScaleView(runStarts[r], step), "-", ends.get(p)));
            }
        }
        IntVar sum = model.intVar(0, horizon * flies.length);
        model.sum(waits, "=", sum).post();
        return sum;
    }
}
