package fettle.engine.health.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CapacityEstimatorTest {
    private static final CapacityPrior LABEL =
            new CapacityPrior(TradeUnit.AMPERE_HOUR.toSi(2.2), TradeUnit.AMPERE_HOUR.toSi(0.33));

    @Test
    void twelvePairsOutweighTheLabel() {
        CapacityReport report = CapacityEstimator.of(WorkedCase.pairs(), LABEL);
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(report.capacity().value())).isCloseTo(2.0, within(0.02));
        assertThat(report.lowCoulombs()).isLessThan(TradeUnit.AMPERE_HOUR.toSi(2.0));
        assertThat(report.highCoulombs()).isGreaterThan(TradeUnit.AMPERE_HOUR.toSi(2.0));
        assertThat(report.recursionCoulombs()).isCloseTo(report.capacity().value(), within(30.0));
        assertThat(report.outliers()).isEmpty();
    }

    @Test
    void withoutEvidenceTheLabelIsAllThereIs() {
        CapacityReport report = CapacityEstimator.of(List.of(), LABEL);
        assertThat(report.capacity().value()).isCloseTo(LABEL.coulombs(), within(1e-6));
        assertThat(report.capacity().standardDeviation()).isCloseTo(LABEL.deviation(), within(1e-6));
    }

    @Test
    void slipOfThePenIsShownAndHardlyMovesTheAnswer() {
        List<CapacityPair> pairs = new ArrayList<>(WorkedCase.pairs());
        double right = CapacityEstimator.of(pairs, LABEL).capacity().value();
        pairs.set(4, slip(pairs.get(4)));
        CapacityReport report = CapacityEstimator.of(pairs, LABEL);
        assertThat(report.outliers()).hasSize(1);
        assertThat(report.outliers().get(0).pair().how()).isEqualTo("slip");
        assertThat(report.influences()).hasSize(12);
        assertThat(report.capacity().value()).isCloseTo(right, within(TradeUnit.AMPERE_HOUR.toSi(0.02)));
        assertThat(report.scatter()).isGreaterThan(1);
    }

    @Test
    void sharesOfInformationLeaveTheRestToTheLabel() {
        CapacityReport report = CapacityEstimator.of(WorkedCase.pairs(), LABEL);
        double told = report.influences().stream().mapToDouble(Influence::share).sum();
        assertThat(told).isBetween(0.98, 1.0);
        assertThat(report.influences().get(8).share())
                .as("widest swing with the best rests counts more than the smallest")
                .isGreaterThan(report.influences().get(7).share());
    }

    @Test
    void commonErrorsDoNotShrinkWithMorePairs() {
        List<CapacityPair> many = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            many.add(new CapacityPair(Instant.EPOCH, 0.5, 0.01, 0.02, 3600, 20, "same"));
        }
        CapacityReport report = CapacityEstimator.of(many, LABEL);
        double common = 0.02 / 0.5 * report.capacity().value();
        assertThat(report.capacity().standardDeviation()).isGreaterThan(0.95 * common);
    }

    @Test
    void refusesPairsThatGoOppositeWays() {
        assertThatThrownBy(() -> new CapacityPair(Instant.EPOCH, 0.5, 0.01, 0, -3600, 20, "wrong way"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("sign of the current");
    }

    private static CapacityPair slip(CapacityPair pair) {
        return new CapacityPair(
                pair.at(),
                pair.changeFraction(),
                pair.changeDeviation(),
                pair.curveDeviation(),
                2 * pair.coulombs(),
                pair.coulombsDeviation(),
                "slip");
    }
}
