package fettle.planner.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.ChargeAnswer;
import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import fettle.planner.problem.ChargeCurve;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beside the engine's own charge answer, which simulates each charge by itself. */
class CurveFitterTest {
    private static final Limits LIMITS = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());

    @ParameterizedTest(name = "{0} cells of {1} mAh at {2} A")
    @CsvSource({"3, 2200, 2.2", "3, 2200, 4.4", "6, 5000, 5", "4, 3300, 10", "1, 300, 0.3", "2, 1000, 3"})
    void agreesWithTheSimulationWithinTwoInAHundredAndNeverBelowIt(int cells, double capacity, double amps) {
        PackModel pack = pack(cells, capacity);
        ChargeMeans means = ChargeMeans.ofAmps(amps);
        FittedCurve fitted = CurveFitter.filling(List.of(pack), LIMITS.si(Quantity.CHARGE_LIMIT), means);
        assertThat(fitted.greatestErrorFraction()).isLessThan(0.02);
        for (double start : new double[] {0.15, 0.35, 0.5, 0.66, 0.8}) {
            double simulated = ChargeAnswer.of(pack.withCharge(start), LIMITS, means)
                    .duration()
                    .value();
            double planned = 60 * minutes(fitted.curve(), start);
            assertThat(planned / simulated).as("from %s", start).isBetween(0.9995, 1.02);
        }
    }

    @Test
    void neverUnderstatesPowerAndKeepsTheEnergy() {
        PackModel pack = pack(4, 3300);
        ChargeMeans means = ChargeMeans.ofAmps(6.6);
        ChargeCurve curve = CurveFitter.filling(List.of(pack), LIMITS.si(Quantity.CHARGE_LIMIT), means)
                .curve();
        double most = curve.pieces().stream()
                .mapToDouble(ChargeCurve.Piece::watts)
                .max()
                .orElseThrow();
        assertThat(most).isBetween(6.6 * 4 * 4.15, 6.6 * 4 * 4.2 + 0.1);
        double simulated = ChargeAnswer.of(pack.withCharge(0.002), LIMITS, means)
                        .sourceEnergy()
                        .value()
                * means.efficiency();
        double planned = 3600
                * curve.pieces().stream()
                        .mapToDouble(ChargeCurve.Piece::wattHours)
                        .sum();
        assertThat(planned).isCloseTo(simulated, within(0.03 * simulated));
    }

    @Test
    void chargesTwoInParallelAtTwiceTheCurrentInTheTimeOfOne() {
        PackModel pack = pack(3, 2200);
        double limit = LIMITS.si(Quantity.CHARGE_LIMIT);
        ChargeCurve one = CurveFitter.filling(List.of(pack), limit, ChargeMeans.ofAmps(2.2))
                .curve();
        ChargeCurve two = CurveFitter.filling(List.of(pack, pack), limit, ChargeMeans.ofAmps(4.4))
                .curve();
        assertThat(minutes(two, 0.3)).isCloseTo(minutes(one, 0.3), within(0.1));
    }

    @Test
    void emptiesAtItsCurrent() {
        FittedCurve fitted = CurveFitter.emptying(pack(3, 2200), 1.1);
        double minutes = fitted.curve().pieces().stream()
                .mapToDouble(ChargeCurve.Piece::minutes)
                .sum();
        assertThat(minutes).isCloseTo(120, within(1.0));
        assertThat(fitted.greatestErrorFraction()).isLessThan(0.02);
    }

    private static PackModel pack(int cells, double milliampereHours) {
        return PackModel.uniform(
                "P07", Chemistry.LIPO, cells, TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours), 0.5, 0.006);
    }

    private static double minutes(ChargeCurve curve, double start) {
        return curve.pieces().stream()
                .mapToDouble(piece -> piece.minutes()
                        * Math.max(
                                0,
                                Math.min(
                                        1,
                                        (piece.highFraction() - start) / (piece.highFraction() - piece.lowFraction()))))
                .sum();
    }
}
