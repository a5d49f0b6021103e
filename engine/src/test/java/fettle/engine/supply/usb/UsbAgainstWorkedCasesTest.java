package fettle.engine.supply.usb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.model.PackModel;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.CitationStatus;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against standards/usb_charge_cases.csv (computed there) and usb_power.csv (published levels). */
final class UsbAgainstWorkedCasesTest {
    private static final double HALF_DIGIT = 0.5e-4;

    @Test
    void everyWorkedChargeIsMetToItsLastDigit() {
        for (String[] row : ReferenceFiles.rows("standards/usb_charge_cases.csv")) {
            UsbFeed feed = new UsbFeed(
                    TradeUnit.WATT_HOUR.toSi(Double.parseDouble(row[1])),
                    Double.parseDouble(row[6]),
                    exact(Double.parseDouble(row[5])),
                    UsbLevel.PD_5);
            assertThat(TradeUnit.WATT_HOUR.fromSi(feed.joulesPerCharge()))
                    .as(row[0])
                    .isCloseTo(Double.parseDouble(row[7]), within(HALF_DIGIT));
            assertThat(feed.fullCharges(TradeUnit.WATT_HOUR.toSi(Double.parseDouble(row[4]))))
                    .as(row[0])
                    .isCloseTo(Double.parseDouble(row[8]), within(HALF_DIGIT));
        }
    }

    @Test
    void everyPublishedLevelIsHeld() {
        List<String[]> rows = ReferenceFiles.rows("standards/usb_power.csv");
        assertThat(rows).hasSize(UsbLevel.values().length);
        for (String[] row : rows) {
            UsbLevel level = Arrays.stream(UsbLevel.values())
                    .filter(one -> one.label().equals(row[0]))
                    .findFirst()
                    .orElseThrow();
            assertThat(level.volts()).as(row[0]).isEqualTo(Double.parseDouble(row[1]));
            assertThat(level.watts()).as(row[0]).isCloseTo(Double.parseDouble(row[3]), within(1e-9));
            assertThat(level.needsFiveAmpCable()).as(row[0]).isEqualTo(Double.parseDouble(row[2]) > 3);
            assertThat(level.status() == CitationStatus.FROM_MEMORY).as(row[0]).isEqualTo("memory".equals(row[4]));
        }
    }

    @Test
    void aPackGivesAboutItsRatedEnergyTimesTheShareUsed() {
        // usb_power.md: 3S 2200 is 24.42 Wh, 80 % of it 19.54 Wh, 0.776 charges of the phone; by the cells' own
        // volts from full to 20 % it is a few per cent more, since they stay above 3.7 V in that span
        UsbAnswer answer = UsbAnswer.of(pack(1), 0.2, phone());
        assertThat(TradeUnit.WATT_HOUR.fromSi(answer.usableJoules().value())).isCloseTo(19.54, within(1.2));
        assertThat(answer.fullCharges().value()).isCloseTo(0.776, within(0.05));
        assertThat(answer.fullCharges().standardDeviation()).isPositive();
    }

    @Test
    void feedingStopsAtAVoltageThatLeavesAtLeastTheChargeAskedFor() {
        UsbAnswer answer = UsbAnswer.of(pack(1), 0.2, phone());
        double restVolts = 3 * DefaultCurves.of(Chemistry.LIPO).volts(0.2);
        double atTheStop = answer.stopVolts() + answer.packAmps() * 3 * 0.005;
        assertThat(atTheStop).isGreaterThanOrEqualTo(restVolts).isLessThan(restVolts + 0.011);
    }

    @Test
    void aPackBelowTheStopGivesNothing() {
        assertThat(UsbAnswer.of(pack(0.15), 0.2, phone()).fullCharges().value()).isZero();
    }

    @Test
    void aTwoCellPackCannotStepDownToTwentyVolts() {
        UsbFeed laptop = new UsbFeed(TradeUnit.WATT_HOUR.toSi(60), 0.9, exact(0.95), UsbLevel.PD_20_3A);
        PackModel twoCells = PackModel.uniform("P01", Chemistry.LIPO, 2, TradeUnit.AMPERE_HOUR.toSi(5), 1, 0.003);
        assertThat(UsbAnswer.of(twoCells, 0.2, laptop).stepsDown()).isFalse();
        assertThat(UsbAnswer.of(pack(1), 0.2, phone()).stepsDown()).isTrue();
    }

    @Test
    void anEfficiencyAboveOneIsRefusedAtItsField() {
        assertThatThrownBy(() -> new UsbFeed(3600, 1.2, exact(0.9), UsbLevel.PD_5))
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults().get(0).field()).isEqualTo("device-efficiency"));
    }

    private static UsbFeed phone() {
        return new UsbFeed(TradeUnit.WATT_HOUR.toSi(19.25), 0.85, new Estimate(0.9, 0.03, List.of()), UsbLevel.PD_5);
    }

    private static PackModel pack(double charge) {
        return PackModel.uniform("P01", Chemistry.LIPO, 3, TradeUnit.MILLIAMPERE_HOUR.toSi(2200), charge, 0.005);
    }

    private static Estimate exact(double value) {
        return new Estimate(value, 0, List.of());
    }
}
