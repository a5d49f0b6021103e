package fettle.engine.health.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Forecasts on two cells aged to their end: B. Saha, K. Goebel, Battery Data Set, NASA Ames, 2007. Life is the cycle at which
 * recorded capacity first falls below the limit; the forecaster stands at 30, 40 … 90 % of it and sees nothing later.
 *
 * <p>The belief as used takes its scatter from other sources; beside it the scatter is chosen on one cell and tried on the other.
 */
class ForecastAgainstOpenDataTest {
    @Test
    void intervalsHoldAndTheModelBeatsBothNaiveForecasts() {
        List<ForecastTables.Score> used = ForecastTables.asUsed();
        assertThat(used).hasSize(70);
        assertThat(ForecastTables.coverage(used)).isGreaterThanOrEqualTo(0.93);
        double model = ForecastTables.lifeError(used, ForecastTables.Score::median);
        assertThat(model).isLessThan(0.2);
        assertThat(model).isLessThan(0.6 * ForecastTables.lifeError(used, ForecastTables.Score::straight));
        double share = ForecastTables.shareError(used, ForecastTables.Score::shareThen);
        assertThat(share).isLessThan(0.6 * ForecastTables.shareError(used, ForecastTables.Score::lastShare));
        assertThat(share).isLessThan(ForecastTables.shareError(used, ForecastTables.Score::straightThen));
    }

    /** One cell says little of another's scatter: it has to hold nearly as often, and no forecast may be worse than a line. */
    @Test
    void scatterChosenOnTheOtherCellHoldsNearlyAsOften() {
        List<ForecastTables.Score> others = ForecastTables.chosenOnTheOthers();
        assertThat(ForecastTables.coverage(others)).isGreaterThanOrEqualTo(0.85);
        assertThat(ForecastTables.lifeError(others, ForecastTables.Score::median))
                .isLessThan(0.8 * ForecastTables.lifeError(others, ForecastTables.Score::straight));
    }

    @Test
    void recoveryAfterRestIsNotTakenForHealing() {
        List<HealthPoint> points = MeasuredFade.points("B0006").subList(0, 90);
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
}
