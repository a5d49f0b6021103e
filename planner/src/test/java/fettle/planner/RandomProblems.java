package fettle.planner;

import fettle.engine.pack.Standing;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Goal;
import fettle.planner.problem.GoalSetting;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Span;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Small problems drawn at random from a seed, with all that a problem can hold. Times in steps of ten minutes. */
public final class RandomProblems {
    private static final int STEP = 10;

    private final Random random;
    private final int packs;
    private final int ports;
    private final int runs;

    private RandomProblems(long seed, int packs, int ports, int runs) {
        random = new Random(seed);
        this.packs = packs;
        this.ports = ports;
        this.runs = runs;
    }

    public static OutingProblem of(long seed, int packs, int ports, int runs) {
        return new RandomProblems(seed, packs, ports, runs).problem();
    }

    private OutingProblem problem() {
        int evening = STEP * (6 + random.nextInt(7));
        int field = evening + STEP * (2 + random.nextInt(3));
        int fieldEnd = field + STEP * (10 + random.nextInt(9));
        int back = fieldEnd + STEP * 2;
        int horizon = back + STEP * (4 + random.nextInt(6));
        List<Presence> presence = List.of(
                new Presence(Place.HOME, new Span(0, evening)),
                new Presence(Place.FIELD, new Span(field, fieldEnd)),
                new Presence(Place.HOME, new Span(back, horizon)));
        List<PlanPack> held = new ArrayList<>();
        for (int i = 0; i < packs; i++) {
            held.add(pack(i, horizon));
        }
        List<RunWanted> wanted = new ArrayList<>();
        for (int i = 0; i < runs; i++) {
            wanted.add(run(i, field, fieldEnd));
        }
        OutingProblem.Means means = means(held, field);
        return new OutingProblem(
                new OutingProblem.Time(horizon, STEP), presence, means, held, wanted, locks(means, wanted), goals());
    }

    private PlanPack pack(int i, int horizon) {
        Standing standing = random.nextInt(10) == 0 ? Standing.GROUNDED : Standing.READY;
        double charge = List.of(0.3, 0.3, 0.5, 0.5, 0.9, 1.0).get(random.nextInt(6));
        return new PlanPack(
                "P" + i,
                standing,
                charge,
                PlanPack.Levels.USUAL,
                new PlanPack.Times(
                        random.nextInt(4) == 0 ? STEP : 0,
                        STEP * random.nextInt(2),
                        STEP * random.nextInt(3),
                        horizon - STEP * random.nextInt(4)),
                random.nextInt(3));
    }

    private OutingProblem.Means means(List<PlanPack> held, int field) {
        List<PowerSource> sources = List.of(
                PowerSource.endless("mains", Place.HOME, 100 + random.nextInt(200)),
                new PowerSource(
                        "field battery",
                        Place.FIELD,
                        80 + random.nextInt(150),
                        random.nextInt(150),
                        random.nextBoolean() ? List.of() : List.of(new Span(field, field + 90))));
        List<PlanCharger> chargers = List.of(
                new PlanCharger("bench", "mains", random.nextBoolean() ? null : 80 + random.nextInt(200), 0.85),
                new PlanCharger("box", "field battery", null, 0.9));
        List<PlanPort> outlets = new ArrayList<>();
        for (int i = 0; i < ports; i++) {
            outlets.add(new PlanPort("h" + i, "bench", 150));
        }
        outlets.add(new PlanPort("f0", "box", 150));
        return new OutingProblem.Means(sources, chargers, outlets, ways(held, outlets));
    }

    private List<ChargeWay> ways(List<PlanPack> held, List<PlanPort> outlets) {
        List<ChargeWay> ways = new ArrayList<>();
        for (PlanPort port : outlets) {
            for (PlanPack pack : held) {
                ways.add(single(pack, port, 1));
                if (random.nextInt(3) == 0) {
                    ways.add(single(pack, port, 2));
                }
                if (random.nextBoolean()) {
                    String name = "empty " + pack.tag() + " on " + port.name();
                    ChargeCurve curve = ChargeCurve.even(Direction.EMPTYING, 40 + random.nextInt(60), 20);
                    ways.add(ChargeWay.single(name, pack.tag(), port.name(), 1, curve, 0));
                }
            }
        }
        if (held.size() > 1 && random.nextBoolean()) {
            List<String> both = List.of(held.get(0).tag(), held.get(1).tag());
            String port = outlets.get(0).name();
            ways.add(new ChargeWay("both on " + port, both, port, 4, curve(1, 60), 3, 0.25));
        }
        return ways;
    }

    private ChargeWay single(PlanPack pack, PlanPort port, int amps) {
        String name = pack.tag() + " on " + port.name() + " at " + amps + " A";
        return ChargeWay.single(name, pack.tag(), port.name(), amps, curve(amps, 40), amps - 1);
    }

    /** Fast below 80 %, then a taper. */
    private ChargeCurve curve(int amps, double watts) {
        double minutes = (40 + random.nextInt(50)) / (double) amps;
        double most = watts * amps * (0.7 + 0.6 * random.nextDouble());
        return new ChargeCurve(
                Direction.FILLING,
                List.of(
                        new Piece(0, 0.8, minutes * 0.7, most, most * minutes * 0.7 / 60),
                        new Piece(0.8, 1, minutes * 0.3, most / 2, most / 2 * minutes * 0.3 / 60)));
    }

    private RunWanted run(int i, int field, int fieldEnd) {
        int earliest = field + random.nextInt(4) * STEP;
        int latest = Math.max(earliest, fieldEnd - STEP * (1 + random.nextInt(6)));
        List<PackSet> fits = new ArrayList<>();
        for (int pack = 0; pack < packs; pack++) {
            if (random.nextInt(3) > 0) {
                fits.add(PackSet.of("P" + pack, 0.4 + 0.1 * random.nextInt(4)));
            }
        }
        if (packs > 1 && random.nextInt(3) == 0) {
            fits.add(new PackSet(List.of(new PackSet.Take("P0", 0.5), new PackSet.Take("P1", 0.6))));
        }
        return new RunWanted(
                "run " + i,
                "craft " + random.nextInt(2),
                1 + random.nextInt(9),
                new RunWanted.Times(earliest, latest, 10 + random.nextInt(2) * 5, random.nextInt(3) * STEP),
                fits);
    }

    private List<Lock> locks(OutingProblem.Means means, List<RunWanted> wanted) {
        int kind = random.nextInt(12);
        if (wanted.isEmpty() || kind > 4) {
            return List.of();
        }
        RunWanted run = wanted.get(random.nextInt(wanted.size()));
        return switch (kind) {
            case 0 -> List.of(new Lock.RunNot(run.name()));
            case 1 -> List.of(new Lock.RunAt(run.name(), run.times().earliestStart()));
            case 2 -> List.of(new Lock.PackNot("P" + random.nextInt(packs)));
            case 3 -> List.of(new Lock.ChargeAt(means.ways().get(0).name(), STEP, Target.FULL));
            default ->
                run.fits().isEmpty()
                        ? List.of()
                        : List.of(new Lock.RunWith(run.name(), run.fits().get(0).tags()));
        };
    }

    private List<GoalSetting> goals() {
        List<Goal> order = new ArrayList<>(List.of(Goal.values()));
        Collections.shuffle(order, random);
        return order.stream()
                .map(goal -> new GoalSetting(goal, goal == Goal.FEWEST_HOURS_AT_FULL ? 10 : 1))
                .toList();
    }
}
