package fettle.planner;

import fettle.engine.pack.Standing;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Goal;
import fettle.planner.problem.GoalSetting;
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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Problems small enough to try everything: two or three packs, two ports, up to three runs, steps of a quarter of an hour. */
public final class TinyProblems {
    private static final int STEP = 15;

    private final Random random;
    private final int packs;

    private TinyProblems(long seed, int packs) {
        random = new Random(seed);
        this.packs = packs;
    }

    public static OutingProblem of(long seed, int packs) {
        return new TinyProblems(seed, packs).problem();
    }

    private OutingProblem problem() {
        List<Presence> presence = List.of(
                new Presence(Place.HOME, new Span(0, packs == 2 ? 75 : 60)),
                new Presence(Place.FIELD, new Span(90, packs == 2 ? 180 : 135)),
                new Presence(Place.HOME, new Span(195, packs == 2 ? 240 : 225)));
        List<PlanPack> held = new ArrayList<>();
        for (int i = 0; i < packs; i++) {
            double charge = List.of(0.3, 0.5, 0.5, 1.0).get(random.nextInt(4));
            held.add(new PlanPack(
                    "P" + i,
                    Standing.READY,
                    charge,
                    PlanPack.Levels.USUAL,
                    new PlanPack.Times(0, random.nextInt(2) * 10, random.nextInt(2) * STEP, 225 + random.nextInt(16)),
                    1 + random.nextInt(2)));
        }
        List<RunWanted> runs = new ArrayList<>();
        int wanted = packs == 2 ? 3 : 2;
        for (int i = 0; i < wanted; i++) {
            runs.add(run(i));
        }
        List<Goal> order = new ArrayList<>(List.of(Goal.values()));
        Collections.shuffle(order, random);
        List<GoalSetting> goals = order.stream()
                .map(goal -> new GoalSetting(
                        goal, goal.ordinal() < 2 ? 1 : List.of(1, 5).get(random.nextInt(2))))
                .toList();
        return new OutingProblem(
                new OutingProblem.Time(240, STEP), presence, means(held), held, runs, List.of(), goals);
    }

    private OutingProblem.Means means(List<PlanPack> held) {
        List<PowerSource> sources = List.of(
                PowerSource.endless("mains", Place.HOME, 80 + random.nextInt(80)),
                new PowerSource("field battery", Place.FIELD, 100, 20 + random.nextInt(60), List.of()));
        List<PlanCharger> chargers = List.of(
                new PlanCharger("bench", "mains", 150, 0.85), new PlanCharger("box", "field battery", null, 0.9));
        List<PlanPort> ports = List.of(
                new PlanPort("h0", "bench", 150), new PlanPort("h1", "bench", 150), new PlanPort("f0", "box", 150));
        List<ChargeWay> ways = new ArrayList<>();
        for (PlanPack pack : held) {
            double minutes = packs == 2 ? 50 + random.nextInt(50) : 40 + random.nextInt(30);
            for (PlanPort port : ports) {
                ways.add(way(pack, port, minutes, 1));
                if (packs == 2 && port.name().equals("h0")) {
                    ways.add(way(pack, port, minutes, 2));
                }
            }
            ChargeCurve emptying = ChargeCurve.even(Direction.EMPTYING, 60, 20);
            ways.add(ChargeWay.single("empty " + pack.tag(), pack.tag(), "h1", 1, emptying, 0));
        }
        return new OutingProblem.Means(sources, chargers, ports, ways);
    }

    private static ChargeWay way(PlanPack pack, PlanPort port, double minutes, int rate) {
        double watts = 50.0 * rate;
        double time = minutes / rate;
        ChargeCurve curve = new ChargeCurve(
                Direction.FILLING,
                List.of(
                        new Piece(0, 0.8, time * 0.7, watts, watts * time * 0.7 / 60),
                        new Piece(0.8, 1, time * 0.3, watts / 2, watts * time * 0.15 / 60)));
        String name = pack.tag() + " on " + port.name() + " " + rate;
        return ChargeWay.single(name, pack.tag(), port.name(), rate, curve, rate - 1);
    }

    private RunWanted run(int i) {
        int earliest = 90 + STEP * random.nextInt(3);
        List<PackSet> fits = new ArrayList<>();
        for (int pack = 0; pack < packs; pack++) {
            if (random.nextInt(4) > 0) {
                fits.add(PackSet.of("P" + pack, 0.5 + 0.1 * random.nextInt(3)));
            }
        }
        if (random.nextInt(3) == 0) {
            fits.add(new PackSet(List.of(new PackSet.Take("P0", 0.5), new PackSet.Take("P1", 0.6))));
        }
        return new RunWanted(
                "run " + i,
                "craft " + random.nextInt(2),
                1 + random.nextInt(5),
                new RunWanted.Times(earliest, earliest + STEP * random.nextInt(3), 10, random.nextInt(2) * STEP),
                fits);
    }
}
