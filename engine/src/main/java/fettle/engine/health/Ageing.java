package fettle.engine.health;

import fettle.engine.health.forecast.Crossing;
import fettle.engine.health.forecast.FadeTrend;
import fettle.engine.health.forecast.HealthPoint;
import fettle.engine.health.forecast.UseScenario;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How one measure of health went and where it goes.
 *
 * @param began day 0 of the points
 * @param points the readings, oldest first
 * @param trend the trend through them
 * @param limitShare share of new at which the pack retires
 * @param crossing cycles left until readings fall below it
 */
public record Ageing(Instant began, List<HealthPoint> points, FadeTrend trend, double limitShare, Crossing crossing) {
    private static final double LONGEST_DAYS = 36_500; // a century: beyond, a date says nothing

    public Ageing {
        points = List.copyOf(points);
    }

    /** Fewer readings than this say nothing of a trend. */
    static final int LEAST_POINTS = 3;

    static Ageing of(Instant began, List<HealthPoint> points, FadeTrend trend, double limitShare) {
        return new Ageing(began, points, trend, limitShare, trend.crossing(limitShare));
    }

    /** When it would cross the limit if use changed now. */
    public Crossing crossingIf(UseScenario scenario) {
        return trend.crossing(limitShare, scenario.effect());
    }

    /** The date so many cycles after the last reading, at the pace of the record; empty if never or not told. */
    public Optional<Instant> date(double cycles) {
        double days = trend.cyclesPerDay() > 0 ? cycles / trend.cyclesPerDay() : Double.POSITIVE_INFINITY;
        return days > LONGEST_DAYS
                ? Optional.empty()
                : Optional.of(began.plus(Duration.ofSeconds(
                        Math.round(TradeUnit.DAY.toSi(trend.last().day() + days)))));
    }
}
