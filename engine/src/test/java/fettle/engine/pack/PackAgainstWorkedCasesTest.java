package fettle.engine.pack;

import static fettle.engine.pack.Packs.NOW;
import static fettle.engine.pack.Packs.history;
import static fettle.engine.pack.Packs.lipo;
import static fettle.engine.pack.Packs.packVolts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.assessment.PackAssessor;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Currents, energies and volts per cell against sums done by hand. Common practice, no source. */
final class PackAgainstWorkedCasesTest {
    /** Capacity in mAh, C rating, current in A; exact but for the last bit of a double. */
    @ParameterizedTest(name = "{0} mAh at {1}C = {2} A")
    @CsvSource({"5000, 3, 15", "5000, 30, 150", "450, 1, 0.45", "2200, 0.5, 1.1"})
    void theCurrentOfARateIsTheRateTimesTheCapacity(double capacity, double rate, double amps) {
        assertThat(lipo(4, capacity).ampsOfRate(rate)).isCloseTo(amps, within(1e-12));
    }

    /** Nominal volts × capacity as 49 CFR 171.8 defines watt-hours: 3.7 V × 4 × 5 Ah = 74 Wh, 11.1 V × 2.2 Ah = 24.42 Wh. */
    @ParameterizedTest(name = "{0}S {1} mAh LiPo = {2} Wh")
    @CsvSource({"4, 5000, 74", "3, 2200, 24.42", "6, 4500, 99.9", "1, 450, 1.665"})
    void ratedEnergyIsNominalVoltsTimesCapacity(int cells, double capacity, double wattHours) {
        assertThat(TradeUnit.WATT_HOUR.fromSi(lipo(cells, capacity).ratedEnergyJoules()))
                .isCloseTo(wattHours, within(1e-9));
    }

    /** 7.92 V over two cells is 3.96 V each: told so where the pack is registered with a count that cannot be. */
    @Test
    void sevenVolts92IsThreeVolts96ForEachOfTwoCells() {
        Assessment assessment = PackAssessor.assess(
                history(lipo(4, 2200), packVolts(1, 7.92)), RuleSet.of(List.of()), MeterAccuracy.USUAL, NOW);
        assertThat(assessment.standing()).isEqualTo(Standing.GROUNDED);
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.id().equals("contradiction"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.statement()).endsWith("it would fit 2S at 3.96 V"));
    }
}
