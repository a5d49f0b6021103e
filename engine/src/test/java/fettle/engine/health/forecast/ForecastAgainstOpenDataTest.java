package fettle.engine.health.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.reference.ReferenceFiles;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/**
 * Forecasts on two cells aged to their end: B. Saha, K. Goebel, Battery Data Set, NASA Ames, 2007. Life is the cycle at which
 * recorded capacity first falls below the limit; the forecaster stands at 30, 40 … 90 % of it and sees nothing later.
 *
 * <p>The scatter parameters of the belief were chosen on these two cells, so coverage here is no proof for others.
 */
class ForecastAgainstOpenDataTest {
    private static final double[] LIMITS = {0.9, 0.85, 0.8, 0.75, 0.7};
    private static final double[] STANDS = {0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};

    @Test
    void intervalsHoldAndTheModelBeatsBothNaiveForecasts() {
        List<Score> all = new ArrayList<>();
        for (String cell : List.of("B0005", "B0006")) {
            List<HealthPoint> points = points(cell);
            for (double limit : LIMITS) {
                int life = firstBelow(points, limit);
                for (double stand : STANDS) {
                    all.add(score(cell, points, limit, life, (int) Math.round(stand * life)));
                }
            }
        }
        assertThat(all).hasSize(2 * LIMITS.length * STANDS.length);
        double coverage = mean(all, score -> score.holds() ? 1 : 0);
        double model = mean(all, score -> Math.min(1, Math.abs(score.median() - score.life()) / score.life()));
        double straight = mean(all, score -> Math.min(1, Math.abs(score.straight() - score.life()) / score.life()));
        double modelShare = mean(all, score -> Math.abs(score.shareThen() - score.trueShare()));
        double lastShare = mean(all, score -> Math.abs(score.lastShare() - score.trueShare()));
        assertThat(coverage).isGreaterThanOrEqualTo(0.9);
        assertThat(model).isLessThan(0.2);
        assertThat(model).isLessThan(0.6 * straight);
        assertThat(modelShare).isLessThan(0.6 * lastShare);
    }

    @Test
    void recoveryAfterRestIsNotTakenForHealing() {
        List<HealthPoint> points = points("B0006").subList(0, 90);
        FadeTrend trend = FadeTrend.through(points, FadeBelief.LITHIUM);
        double jump = points.get(89).share() - points.get(88).share();
        assertThat(jump).as("cycle 90 follows a rest of 1.4 days").isGreaterThan(0.07);
        assertThat(trend.changepoints()).contains(90.0);
        assertThat(trend.fadePerCycle().value()).isPositive();
        double before = FadeTrend.through(points.subList(0, 89), FadeBelief.LITHIUM)
                .level()
                .value();
        assertThat(trend.level().value() - before)
                .as("what the level takes of the jump")
                .isLessThan(0.5 * jump);
    }

    private record Score(
            String cell,
            double limit,
            int stand,
            int life,
            double low,
            double median,
            double high,
            double straight,
            double shareThen,
            double lastShare,
            double trueShare) {
        boolean holds() {
            return low <= life && life <= high;
        }
    }

    private static Score score(String cell, List<HealthPoint> points, double limit, int life, int stand) {
        List<HealthPoint> seen = points.subList(0, stand);
        FadeTrend trend = FadeTrend.through(seen, FadeBelief.LITHIUM);
        Crossing crossing = trend.crossing(limit);
        return new Score(
                cell,
                limit,
                stand,
                life,
                stand + crossing.low(),
                stand + crossing.median(),
                stand + crossing.high(),
                straight(seen, limit),
                trend.after(life - stand).value(),
                seen.get(stand - 1).share(),
                points.get(life - 1).share());
    }

    private static double straight(List<HealthPoint> seen, double limit) {
        SimpleRegression line = new SimpleRegression();
        seen.forEach(point -> line.addData(point.cycle(), point.share()));
        double crossing = (limit - line.getIntercept()) / line.getSlope();
        return line.getSlope() < 0 ? crossing : Double.POSITIVE_INFINITY;
    }

    private static double mean(List<Score> scores, ToDoubleFunction<Score> of) {
        return scores.stream().mapToDouble(of).average().orElseThrow();
    }

    private static int firstBelow(List<HealthPoint> points, double limit) {
        int at = 0;
        while (points.get(at).share() >= limit) {
            at++;
        }
        return at + 1;
    }

    private static List<HealthPoint> points(String cell) {
        List<String[]> rows = ReferenceFiles.rows("battery/nasa-ageing/" + cell + "_cycles.csv");
        double first = Double.parseDouble(rows.get(0)[2]);
        LocalDateTime start = LocalDateTime.parse(rows.get(0)[1]);
        List<HealthPoint> points = new ArrayList<>();
        for (String[] row : rows) {
            double days = Duration.between(start, LocalDateTime.parse(row[1])).toSeconds() / 86_400.0;
            points.add(new HealthPoint(Double.parseDouble(row[0]), days, Double.parseDouble(row[2]) / first, 0));
        }
        return points;
    }
}
