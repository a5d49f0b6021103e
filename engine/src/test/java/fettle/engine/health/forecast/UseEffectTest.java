package fettle.engine.health.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against ratios read from the table of battery/thermal-and-ageing.md, losses after 365 days. */
class UseEffectTest {
    private static final Use USUAL = Use.USUAL;

    @Test
    void keptFullWearsByWhatThreePublishedModelsSay() {
        UseEffect effect = UseEffect.between(USUAL, new Use(1, USUAL.keptKelvins(), USUAL.depthFraction()));
        // 25 °C: 4.57/3.05, 6.89/3.81, 5.10/1.01
        double mean = Math.cbrt(4.57 / 3.05 * 6.89 / 3.81 * 5.10 / 1.01);
        assertThat(effect.rest().value()).isCloseTo(mean, within(0.02));
        assertThat(effect.rest().standardDeviation()).isBetween(1.0, 2.0);
        assertThat(effect.cycling().value()).isEqualTo(1);
    }

    @Test
    void tenDegreesMoreWearByWhatThreePublishedModelsSay() {
        UseEffect effect = UseEffect.between(USUAL, new Use(0, USUAL.keptKelvins() + 10, USUAL.depthFraction()));
        // 25 to 35 °C at storage charge: 6.51/3.05, 5.38/3.81, 2.19/1.01
        assertThat(effect.rest().value()).isCloseTo(Math.cbrt(6.51 / 3.05 * 5.38 / 3.81 * 2.19 / 1.01), within(0.02));
    }

    @Test
    void retirementComesSoonerWhenKeptFullAndLaterWhenRunShallow() {
        List<HealthPoint> points = new ArrayList<>();
        for (int cycle = 0; cycle <= 40; cycle += 4) {
            points.add(new HealthPoint(cycle, 7.0 * cycle, 1 - 0.002 * cycle, 0.01));
        }
        FadeTrend trend = FadeTrend.through(points, FadeBelief.LITHIUM);
        double usual = trend.crossing(0.8).median();
        assertThat(trend.crossing(0.8, UseScenario.ASKED.get(1).effect()).median())
                .isLessThan(usual);
        assertThat(trend.crossing(0.8, UseScenario.ASKED.get(3).effect()).median())
                .isGreaterThan(usual);
        assertThat(trend.crossing(0.8, UseEffect.NONE)).isEqualTo(trend.crossing(0.8));
    }

    @Test
    void doubtOfTheFactorWidensTheInterval() {
        List<HealthPoint> points = List.of(
                new HealthPoint(0, 0, 1, 0.01),
                new HealthPoint(10, 200, 0.98, 0.01),
                new HealthPoint(20, 400, 0.96, 0.01));
        FadeTrend trend = FadeTrend.through(points, FadeBelief.LITHIUM);
        assertThat(trend.after(50, UseScenario.ASKED.get(1).effect()).standardDeviation())
                .isGreaterThan(trend.after(50).standardDeviation());
    }

    @Test
    void refusesWhatTheModelsWereNotMadeFor() {
        assertThatThrownBy(() -> new Use(1.5, 400, 0))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("kept");
    }
}
