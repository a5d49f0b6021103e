package fettle.engine.health.forecast;

import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.Estimate;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Cells aged to their end, B. Saha, K. Goebel, Battery Data Set, NASA Ames, 2007, read in place; and the scatter of a belief as
 * chosen on some of them: that under which readings 10, 20, 40 and 80 cycles ahead were most likely, from every fifth cycle.
 */
final class MeasuredFade {
    static final List<String> CELLS = List.of("B0005", "B0006");
    private static final double SECONDS_PER_DAY = 86_400;
    private static final int FIRST_STAND = 15;
    private static final int STAND_STEP = 5;
    private static final int[] AHEAD = {10, 20, 40, 80};
    private static final int ROUNDS = 6;
    private static final double[] FACTORS = {0.5, 0.7, 0.85, 1.2, 1.4, 2};

    private MeasuredFade() {}

    static List<HealthPoint> points(String cell) {
        List<String[]> rows = ReferenceFiles.rows("battery/nasa-ageing/" + cell + "_cycles.csv");
        double first = Double.parseDouble(rows.get(0)[2]);
        LocalDateTime start = LocalDateTime.parse(rows.get(0)[1]);
        List<HealthPoint> points = new ArrayList<>();
        for (String[] row : rows) {
            double days = Duration.between(start, LocalDateTime.parse(row[1])).toSeconds() / SECONDS_PER_DAY;
            points.add(new HealthPoint(Double.parseDouble(row[0]), days, Double.parseDouble(row[2]) / first, 0));
        }
        return points;
    }

    /** The belief with its scatter chosen on some cells. */
    static FadeBelief chosenOn(List<String> cells) {
        List<List<HealthPoint>> records =
                cells.stream().map(MeasuredFade::points).toList();
        FadeBelief best = FadeBelief.LITHIUM;
        double likely = likelihood(records, best);
        for (int round = 0; round < ROUNDS; round++) {
            for (double factor : FACTORS) {
                for (UnaryOperator<FadeBelief> change : changes(factor)) {
                    FadeBelief other = change.apply(best);
                    double found = likelihood(records, other);
                    if (found > likely) {
                        likely = found;
                        best = other;
                    }
                }
            }
        }
        return best;
    }

    private static double likelihood(List<List<HealthPoint>> records, FadeBelief belief) {
        return records.stream().mapToDouble(points -> ofRecord(points, belief)).sum();
    }

    /** Mean over horizons and places of the logarithm of the forecast's density at what was read. */
    private static double ofRecord(List<HealthPoint> points, FadeBelief belief) {
        double sum = 0;
        int count = 0;
        for (int stand = FIRST_STAND; stand < points.size(); stand += STAND_STEP) {
            FadeTrend trend = FadeTrend.through(points.subList(0, stand), belief);
            for (int ahead : AHEAD) {
                if (stand + ahead <= points.size()) {
                    Estimate then = trend.after(ahead);
                    double off = (points.get(stand + ahead - 1).share() - then.value()) / then.standardDeviation();
                    sum -= Math.log(then.standardDeviation())
                            + 0.5 * (FadeTrend.FREEDOM + 1) * Math.log1p(off * off / FadeTrend.FREEDOM);
                    count++;
                }
            }
        }
        return sum / count;
    }

    private static List<UnaryOperator<FadeBelief>> changes(double factor) {
        return List.of(
                b -> with(b, b.wander() * factor, b.reading(), b.recovery(), b.recoveryStays()),
                b -> with(b, b.wander(), b.reading() * factor, b.recovery(), b.recoveryStays()),
                b -> with(b, b.wander(), b.reading(), b.recovery() * factor, b.recoveryStays()),
                b -> with(b, b.wander(), b.reading(), b.recovery(), Math.pow(b.recoveryStays(), factor)));
    }

    private static FadeBelief with(FadeBelief b, double wander, double reading, double recovery, double stays) {
        return new FadeBelief(
                b.perCycle(), b.perCycleDeviation(), b.perCycleDrift(), wander, reading, recovery, stays, b.perDay());
    }
}
