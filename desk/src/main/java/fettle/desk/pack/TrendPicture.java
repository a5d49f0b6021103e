package fettle.desk.pack;

import fettle.engine.health.Ageing;
import fettle.engine.health.forecast.FadeTrend;
import fettle.engine.health.forecast.HealthPoint;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Capacity over cycles: readings with whiskers of one standard deviation, the trend with its 95 % band, the limit hatched.
 * Lengths are units of a drawing {@value #WIDTH} wide and {@value #HEIGHT} high, its origin top left.
 *
 * @param points readings
 * @param line corners of the trend from the last reading on
 * @param band corners of its band
 * @param limit height of the retire limit
 * @param marks marks of the axis of shares
 * @param cycles marks of the axis of cycles
 * @param text the same in words
 */
public record TrendPicture(
        List<Point> points, String line, String band, String limit, List<Mark> marks, List<Mark> cycles, String text) {
    static final int WIDTH = 640;
    static final int HEIGHT = 240;
    private static final int LEFT = 46;
    private static final int BOTTOM = 24;
    private static final double LOWEST = 0.4;
    private static final double HIGHEST = 1.2;
    private static final int STEPS = 40;
    private static final double LEAST_CYCLES = 20;

    /** One reading with its whisker. */
    public record Point(String x, String y, String low, String high) {}

    /** One mark of an axis. */
    public record Mark(String at, String label) {}

    static TrendPicture of(Ageing ageing) {
        FadeTrend trend = ageing.trend();
        double last = trend.last().cycle();
        double ahead = Math.max(
                LEAST_CYCLES,
                Double.isFinite(ageing.crossing().median())
                        ? Math.min(1.25 * ageing.crossing().median(), 4 * last + LEAST_CYCLES)
                        : last);
        Scale scale = new Scale(last + ahead);
        List<String> line = new ArrayList<>();
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            double on = ahead * step / STEPS;
            Estimate then = trend.after(on);
            double half = FadeTrend.TWO_SIDED_95 * then.standardDeviation();
            line.add(scale.corner(last + on, then.value()));
            above.add(scale.corner(last + on, then.value() + half));
            below.add(0, scale.corner(last + on, then.value() - half));
        }
        above.addAll(below);
        return new TrendPicture(
                ageing.points().stream().map(scale::point).toList(),
                String.join(" ", line),
                String.join(" ", above),
                scale.y(ageing.limitShare()),
                marks(scale),
                cycles(scale),
                text(ageing));
    }

    private static List<Mark> marks(Scale scale) {
        List<Mark> marks = new ArrayList<>();
        for (int perCent = 40; perCent <= 120; perCent += 20) {
            marks.add(new Mark(scale.y(perCent / 100.0), perCent + " %"));
        }
        return marks;
    }

    private static List<Mark> cycles(Scale scale) {
        double rough = scale.longest() / 5;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = rough / power > 5 ? 10 * power : rough / power > 2 ? 5 * power : 2 * power;
        List<Mark> marks = new ArrayList<>();
        for (double cycle = 0; cycle <= scale.longest(); cycle += step) {
            marks.add(new Mark(scale.x(cycle), String.format(Locale.ROOT, "%.0f", cycle)));
        }
        return marks;
    }

    private static String text(Ageing ageing) {
        return "Capacity as a share of what its first charges said, over full cycles: "
                + ageing.points().size() + " readings, now "
                + TradeUnit.PERCENT.print(ageing.trend().level(), 0) + ", limit "
                + TradeUnit.PERCENT.print(ageing.limitShare(), 0);
    }

    /** Where cycles and shares lie in the drawing. */
    private record Scale(double longest) {
        String x(double cycle) {
            return units(LEFT + (WIDTH - LEFT) * cycle / longest);
        }

        String y(double share) {
            double inside = Math.max(LOWEST, Math.min(HIGHEST, share));
            return units((HEIGHT - BOTTOM) * (HIGHEST - inside) / (HIGHEST - LOWEST));
        }

        String corner(double cycle, double share) {
            return x(cycle) + "," + y(share);
        }

        Point point(HealthPoint point) {
            return new Point(
                    x(point.cycle()),
                    y(point.share()),
                    y(point.share() - point.deviation()),
                    y(point.share() + point.deviation()));
        }

        private static String units(double value) {
            return String.format(Locale.ROOT, "%.1f", value);
        }
    }
}
