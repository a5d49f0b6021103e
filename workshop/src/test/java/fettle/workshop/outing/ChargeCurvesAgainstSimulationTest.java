package fettle.workshop.outing;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.ChargeAnswer;
import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.assessment.PackAssessor;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import fettle.planner.problem.ChargeCurve;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Durations by the pieces against the engine's simulation of the whole pack from the same charge. */
class ChargeCurvesAgainstSimulationTest {
    private static final double KELVINS = 293.15;

    /** The issue asks for 2 %; what the pieces and the one simulated cell leave is less. */
    private static final double WITHIN = 0.02;

    @ParameterizedTest
    @CsvSource({
        "LIPO, 4, 5000, 0.003, 5, 0.30",
        "LIPO, 6, 5000, 0.003, 10, 0.55",
        "LIPO, 1, 300, 0.040, 0.3, 0.20",
        "LIPO, 3, 2200, 0.008, 4.4, 0.83",
        "LIFEPO4, 4, 4200, 0.006, 4.2, 0.40",
        "LI_ION, 3, 3000, 0.030, 1.5, 0.15"
    })
    void agreeWithinTwoPerCent(Chemistry chemistry, int cells, double mAh, double ohms, double amps, double from) {
        Pack pack = new Pack(
                "P1",
                chemistry,
                cells,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(mAh),
                null,
                null,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
        Limits limits = RuleSet.of(List.of()).limitsFor(chemistry, "P1", List.of());
        Assessment assessment = PackAssessor.assess(
                new PackHistory(pack, List.of(), List.of(), List.of()),
                RuleSet.of(List.of()),
                MeterAccuracy.USUAL,
                Instant.EPOCH);
        PackAtHand hand = new PackAtHand(assessment, limits, pack.ratedCapacityCoulombs(), ohms, from, null, "");
        double planned = minutes(new ChargeCurves(KELVINS).filling(hand, amps), from);
        PackModel model = PackModel.uniform("P1", chemistry, cells, pack.ratedCapacityCoulombs(), from, ohms)
                .at(KELVINS, KELVINS);
        ChargeAnswer simulated = ChargeAnswer.of(model, limits, ChargeMeans.ofAmps(amps));
        double minutes = TradeUnit.MINUTE.fromSi(simulated.duration().value());
        assertThat(Math.abs(planned / minutes - 1))
                .as("planned %.1f min, simulated %.1f min", planned, minutes)
                .isLessThan(WITHIN);
    }

    private static double minutes(ChargeCurve curve, double from) {
        return curve.pieces().stream()
                .filter(piece -> piece.highFraction() > from)
                .mapToDouble(piece -> piece.minutes()
                        * Math.min(1, (piece.highFraction() - from) / (piece.highFraction() - piece.lowFraction())))
                .sum();
    }
}
