package fettle.engine.health.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.regression.SimpleRegression;

/** Forecasts on the measured cells, standing at 30, 40 … 90 % of the way to each limit, and their tables in docs/accuracy.md. */
public final class ForecastTables {
    private static final double[] LIMITS = {0.9, 0.85, 0.8, 0.75, 0.7};
    private static final double[] STANDS = {0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};
    private static final double USUAL_LIMIT = 0.8;

    private ForecastTables() {}

    record Score(
            String cell,
            double limit,
            int stand,
            int life,
            double low,
            double median,
            double high,
            double straight,
            double shareThen,
            double straightThen,
            double lastShare,
            double trueShare) {
        boolean holds() {
            return low <= life && life <= high;
        }
    }

    /** Every forecast with the belief as it is used. */
    static List<Score> asUsed() {
        return scores(cell -> FadeBelief.LITHIUM);
    }

    /** Every forecast with the scatter chosen on the other cells. */
    static List<Score> chosenOnTheOthers() {
        return scores(cell -> MeasuredFade.chosenOn(
                MeasuredFade.CELLS.stream().filter(other -> !other.equals(cell)).toList()));
    }

    private static List<Score> scores(Function<String, FadeBelief> beliefFor) {
        List<Score> all = new ArrayList<>();
        for (String cell : MeasuredFade.CELLS) {
            FadeBelief belief = beliefFor.apply(cell);
            List<HealthPoint> points = MeasuredFade.points(cell);
            for (double limit : LIMITS) {
                int life = firstBelow(points, limit);
                for (double stand : STANDS) {
                    all.add(score(cell, points, belief, limit, life, (int) Math.round(stand * life)));
                }
            }
        }
        return all;
    }

    private static Score score(
            String cell, List<HealthPoint> points, FadeBelief belief, double limit, int life, int stand) {
        List<HealthPoint> seen = points.subList(0, stand);
        FadeTrend trend = FadeTrend.through(seen, belief);
        Crossing crossing = trend.crossing(limit);
        SimpleRegression line = new SimpleRegression();
        seen.forEach(point -> line.addData(point.cycle(), point.share()));
        double straight = (limit - line.getIntercept()) / line.getSlope();
        return new Score(
                cell,
                limit,
                stand,
                life,
                stand + crossing.low(),
                stand + crossing.median(),
                stand + crossing.high(),
                line.getSlope() < 0 ? straight : Double.POSITIVE_INFINITY,
                trend.after(life - stand).value(),
                line.predict(life),
                seen.get(stand - 1).share(),
                points.get(life - 1).share());
    }

    static double coverage(List<Score> scores) {
        return mean(scores, score -> score.holds() ? 1 : 0);
    }

    /** Error of a crossing as a share of life; a forecast that never crosses, or errs by more than a life, counts as one life. */
    static double lifeError(List<Score> scores, ToDoubleFunction<Score> crossing) {
        return mean(
                scores, score -> Math.min(1, Math.abs(crossing.applyAsDouble(score) - score.life()) / score.life()));
    }

    static double shareError(List<Score> scores, ToDoubleFunction<Score> share) {
        return mean(scores, score -> Math.abs(share.applyAsDouble(score) - score.trueShare()));
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

    /** Both ways to come by the scatter, beside both naive forecasts. */
    public static String summary() {
        List<Score> used = asUsed();
        List<Score> others = chosenOnTheOthers();
        StringBuilder table = new StringBuilder("""
                | | crossing, mean error | health at the crossing, mean error | 95 % interval holds |
                | --- | ---: | ---: | ---: |
                """);
        line(table, "trend, belief as used", used);
        line(table, "trend, scatter chosen on the other cell", others);
        table.append(String.format(
                Locale.ROOT,
                "| straight line through all readings | %.0f %% of life | %.1f %% | – |%n",
                100 * lifeError(used, Score::straight),
                100 * shareError(used, Score::straightThen)));
        table.append(String.format(
                Locale.ROOT,
                "| last value | never crosses | %.1f %% | – |%n",
                100 * shareError(used, Score::lastShare)));
        return table.toString();
    }

    private static void line(StringBuilder table, String what, List<Score> scores) {
        table.append(String.format(
                Locale.ROOT,
                "| %s | %.0f %% of life | %.1f %% | %.0f %% |%n",
                what,
                100 * lifeError(scores, Score::median),
                100 * shareError(scores, Score::shareThen),
                100 * coverage(scores)));
    }

    /** The 80 % limit, cell by cell. */
    public static String usualLimit() {
        StringBuilder table = new StringBuilder("""
                | cell | stands at | crossed at | median | 95 % interval | error | straight line | its error | health then, last value off by |
                | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
                """);
        for (Score score : asUsed()) {
            if (Math.abs(score.limit() - USUAL_LIMIT) < 1e-9) {
                table.append(String.format(
                        Locale.ROOT,
                        "| %s | %d | %d | %s | %s to %s | %s | %s | %s | %.1f %% |%n",
                        score.cell(),
                        score.stand(),
                        score.life(),
                        cycles(score.median()),
                        cycles(score.low()),
                        cycles(score.high()),
                        cycles(score.median() - score.life()),
                        cycles(score.straight()),
                        cycles(score.straight() - score.life()),
                        100 * (score.lastShare() - score.trueShare())));
            }
        }
        return table.toString();
    }

    private static String cycles(double cycles) {
        return Double.isFinite(cycles) ? String.format(Locale.ROOT, "%.0f", cycles) : "not in sight";
    }

    /** What changes of use do to wear. */
    public static String use() {
        StringBuilder table = new StringBuilder("""
                | use, against kept at storage charge at 25 °C and run to a fifth | wear at rest | wear in use |
                | --- | ---: | ---: |
                """);
        for (UseScenario scenario : UseScenario.ASKED) {
            UseEffect effect = scenario.effect();
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | × %.2f ± %.2f | × %.2f ± %.2f |%n",
                    scenario.change(),
                    effect.rest().value(),
                    effect.rest().standardDeviation(),
                    effect.cycling().value(),
                    effect.cycling().standardDeviation()));
        }
        return table.toString();
    }
}
