package fettle.bench.outing;

import fettle.engine.pack.Standing;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import fettle.planner.problem.ChargeWay;
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
import java.util.List;
import java.util.Random;

/**
 * Invented evenings and days, drawn from a seed: packs at storage charge the evening before, a shared supply that cannot feed
 * all ports at once, an evening about as long as the charges need, a day at the field with one battery and one port, and the
 * way back to storage at night.
 */
final class Evening {
    private static final int STEP = 5;
    private static final int FIELD_FROM = 15 * 60 + 30;
    private static final int FIELD_TO = 22 * 60;
    private static final int HORIZON = 29 * 60;

    /** Cells and capacity [Ah] of the kinds of pack. */
    private static final double[][] KINDS = {{3, 2.2}, {4, 3.3}, {6, 5}};

    private final Random random;
    private final int packs;
    private final int ports;

    private final boolean fieldCharging;

    private Evening(int packs, int ports, long seed, boolean fieldCharging) {
        random = new Random(seed);
        this.packs = packs;
        this.ports = ports;
        this.fieldCharging = fieldCharging;
    }

    /** Everything is charged at home; there is hardly time for it. */
    static OutingProblem atHome(int packs, int ports, long seed) {
        return new Evening(packs, ports, seed, false).problem();
    }

    /** More runs than packs: some packs are charged again at the field, from one battery. */
    static OutingProblem withField(int packs, int ports, long seed) {
        return new Evening(packs, ports, seed, true).problem();
    }

    private OutingProblem problem() {
        List<PlanPack> held = new ArrayList<>();
        for (int i = 0; i < packs; i++) {
            double charge = Math.round(20 * (0.38 + 0.2 * random.nextDouble())) / 20.0;
            held.add(new PlanPack(
                    "P" + i,
                    Standing.READY,
                    charge,
                    PlanPack.Levels.USUAL,
                    new PlanPack.Times(0, 10, 20, HORIZON - 60),
                    1));
        }
        int evening = Math.max(180, STEP * (int) Math.round(packs * (fieldCharging ? 33.0 : 38.0) / ports / STEP));
        List<Presence> presence = List.of(
                new Presence(Place.HOME, new Span(0, evening)),
                new Presence(Place.HOME, new Span(13 * 60, 14 * 60)),
                new Presence(Place.FIELD, new Span(FIELD_FROM, FIELD_TO)),
                new Presence(Place.HOME, new Span(23 * 60, HORIZON)));
        return new OutingProblem(
                new OutingProblem.Time(HORIZON, STEP),
                presence,
                means(held),
                held,
                runs(),
                List.of(),
                GoalSetting.usualOrder());
    }

    private static double[] kind(int pack) {
        return KINDS[pack % KINDS.length];
    }

    private OutingProblem.Means means(List<PlanPack> held) {
        List<PowerSource> sources = List.of(
                PowerSource.endless("supply", Place.HOME, 95 * ports),
                new PowerSource("field battery", Place.FIELD, 150, 60 * packs, List.of()));
        List<PlanCharger> chargers = List.of(
                new PlanCharger("bench", "supply", null, 0.85), new PlanCharger("box", "field battery", null, 0.85));
        List<PlanPort> outlets = new ArrayList<>();
        List<ChargeWay> ways = new ArrayList<>();
        for (int port = 0; port < ports; port++) {
            outlets.add(new PlanPort("h" + port, "bench", 200));
        }
        if (fieldCharging) {
            outlets.add(new PlanPort("f", "box", 120));
        }
        for (int pack = 0; pack < held.size(); pack++) {
            for (PlanPort port : outlets) {
                ways.add(way(pack, port, 1));
                ways.add(way(pack, port, 2));
                String name = "empty P" + pack + " on " + port.name();
                ChargeCurve emptying = ChargeCurve.even(Direction.EMPTYING, 150, 0);
                ways.add(ChargeWay.single(name, "P" + pack, port.name(), 1, emptying, 0));
            }
        }
        return new OutingProblem.Means(sources, chargers, outlets, ways);
    }

    /** Constant current to 85 %, then a taper. */
    private static ChargeWay way(int pack, PlanPort port, int rate) {
        double volts = 4.1 * kind(pack)[0];
        double watts = volts * kind(pack)[1] * rate;
        double minutes = 60.0 / rate;
        double taper = 14 + 4.0 * rate;
        List<Piece> pieces = List.of(
                new Piece(0, 0.85, minutes * 0.85, watts, watts * 0.94 * minutes * 0.85 / 60),
                new Piece(0.85, 0.93, taper * 0.35, watts * 0.9, watts * 0.08 * minutes / 60),
                new Piece(0.93, 1, taper * 0.65, watts * 0.45, watts * 0.07 * minutes / 60));
        String name = "P" + pack + " on " + port.name() + " at " + rate + " C";
        return ChargeWay.single(
                name,
                "P" + pack,
                port.name(),
                rate * kind(pack)[1],
                new ChargeCurve(Direction.FILLING, pieces),
                rate - 1);
    }

    private List<RunWanted> runs() {
        List<RunWanted> runs = new ArrayList<>();
        int wanted = fieldCharging ? packs + packs / 4 : packs;
        for (int i = 0; i < wanted; i++) {
            int kind = i % KINDS.length;
            List<PackSet> fits = new ArrayList<>();
            for (int pack = kind; pack < packs; pack += KINDS.length) {
                fits.add(PackSet.of("P" + pack, 0.6 + 0.05 * random.nextInt(3)));
            }
            int crafts = Math.max(1, packs / 12);
            int earliest = FIELD_FROM + STEP * random.nextInt(36);
            int latest = Math.min(FIELD_TO - 30, earliest + 120 + STEP * random.nextInt(24));
            runs.add(new RunWanted(
                    "run " + i,
                    "craft " + kind + "." + i / KINDS.length % crafts,
                    1 + random.nextInt(9),
                    new RunWanted.Times(earliest, latest, 10, 15),
                    fits));
        }
        return runs;
    }
}
