package fettle.engine.supply.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Peukert against published sums, rest volts against lead_acid_ocv.csv (citing BCI), the ledger against its own laws. */
final class FieldLedgerAgainstWorkedCasesTest {
    @Test
    void peukertMeetsTwoPublishedSums() {
        // electrotechnik.net, 9 January 2010: 100 Ah (I^k·t form, so stated at 1 A), k 1.2: 5 A for 14.5 h
        assertThat(hours(battery(100, 100, 1.2), 5)).isCloseTo(14.5, within(0.05));
        // easycalculation.com: 250 Ah, 20 A, k 1.3: 5.088631644 h
        assertThat(hours(battery(250, 250, 1.3), 20)).isCloseTo(5.088631644, within(1e-8));
    }

    @Test
    void theExponentComesBackFromTwoDischarges() {
        FieldBattery battery = battery(80, 20, 1.23);
        double exponent = FieldBattery.exponent(10, battery.secondsFromFull(10), 30, battery.secondsFromFull(30));
        assertThat(exponent).isCloseTo(1.23, within(1e-12));
    }

    @Test
    void aGentleLoadIsNeverCreditedWithMoreThanTheLabel() {
        assertThat(hours(battery(100, 20, 1.25), 1)).isCloseTo(100, within(1e-9));
    }

    @Test
    void restVoltsOfEveryPublishedRowGiveItsCharge() {
        for (String[] row : ReferenceFiles.rows("standards/lead_acid_ocv.csv")) {
            Estimate charge = FieldBattery.chargeAtRest(Chemistry.LEAD_ACID, 6, Double.parseDouble(row[0]));
            assertThat(TradeUnit.PERCENT.fromSi(charge.value()))
                    .as(row[0] + " V")
                    .isCloseTo(Double.parseDouble(row[1]), within(0.01));
            assertThat(charge.standardDeviation()).isPositive();
        }
    }

    @Test
    void withoutPeukertAndResistanceTheLedgerIsPlainEnergy() {
        FieldBattery lithium = lithium(1);
        FieldLedger ledger = FieldLedger.of(lithium, List.of(new FieldUse("charger", 80, 3600, 0.8)));
        assertThat(TradeUnit.WATT_HOUR.fromSi(ledger.givenJoules().value())).isCloseTo(100, within(1e-9));
        assertThat(TradeUnit.WATT_HOUR.fromSi(ledger.lostJoules())).isCloseTo(20, within(1e-9));
        double coulombs = lithium.ratedCoulombs() * (1 - ledger.chargeLeft().value());
        double meanVolts = TradeUnit.WATT_HOUR.toSi(100) / coulombs;
        assertThat(meanVolts).isBetween(lithium.restVolts(0.6), lithium.restVolts(1));
        assertThat(ledger.enough()).isTrue();
    }

    @Test
    void aLeadAcidBatteryGivesLessTheHarderItIsDrawn() {
        FieldBattery battery = battery(80, 20, 1.25);
        double gentle = FieldLedger.of(battery, List.of(new FieldUse("charger", 50, 7200, 0.85)))
                .chargeLeft()
                .value();
        double hard = FieldLedger.of(battery, List.of(new FieldUse("charger", 200, 1800, 0.85)))
                .chargeLeft()
                .value();
        assertThat(hard).isLessThan(gentle - 0.02);
    }

    @Test
    void theReserveEndsTheLedgerAndLaterUsesGetNothing() {
        FieldBattery battery = battery(80, 20, 1.25);
        FieldLedger ledger = FieldLedger.of(
                battery, List.of(new FieldUse("first", 300, 36_000, 0.85), new FieldUse("second", 50, 600, 0.85)));
        assertThat(ledger.enough()).isFalse();
        assertThat(ledger.lines().get(0).whole()).isFalse();
        assertThat(ledger.lines().get(0).chargeAfter()).isCloseTo(battery.reserve(), within(1e-12));
        assertThat(ledger.lines().get(1).seconds()).isZero();
        assertThat(ledger.reserveVolts()).isCloseTo(12.24, within(0.001)); // the table's row of 50 %
    }

    @Test
    void splittingAUseChangesNothing() {
        FieldBattery battery = battery(80, 20, 1.25);
        double once = FieldLedger.of(battery, List.of(new FieldUse("a", 100, 7200, 0.85)))
                .chargeLeft()
                .value();
        double twice = FieldLedger.of(
                        battery, List.of(new FieldUse("a", 100, 3600, 0.85), new FieldUse("b", 100, 3600, 0.85)))
                .chargeLeft()
                .value();
        assertThat(twice).isCloseTo(once, within(1e-4));
    }

    @Test
    void morePowerThanTheBatteryCanGiveIsRefused() {
        FieldBattery weak = new FieldBattery(
                Chemistry.LEAD_ACID, 6, TradeUnit.AMPERE_HOUR.toSi(7), 72_000, 1.25, 0.5, sure(1), 0.5);
        assertThatThrownBy(() -> FieldLedger.of(weak, List.of(new FieldUse("charger", 200, 600, 0.85))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("can give at most");
    }

    @Test
    void aGeneratorMeetsItsMakersTwoTimesAndNeverPromisesMoreBetween() {
        Generator generator = new Generator(1000, 4 * 3600, 9 * 3600, 1);
        assertThat(generator.seconds(1000)).isCloseTo(4 * 3600, within(1e-6));
        assertThat(generator.seconds(250)).isCloseTo(9 * 3600, within(1e-6));
        assertThat(generator.seconds(600)).isBetween(4.0 * 3600, 9.0 * 3600);
        assertThatThrownBy(() -> generator.seconds(1001)).isInstanceOf(InputException.class);
    }

    private static double hours(FieldBattery battery, double amps) {
        return TradeUnit.HOUR.fromSi(battery.secondsFromFull(amps));
    }

    private static FieldBattery battery(double ampereHours, double hours, double exponent) {
        return new FieldBattery(
                Chemistry.LEAD_ACID,
                6,
                TradeUnit.AMPERE_HOUR.toSi(ampereHours),
                TradeUnit.HOUR.toSi(hours),
                exponent,
                0.01,
                sure(1),
                0.5);
    }

    private static FieldBattery lithium(double charge) {
        return new FieldBattery(Chemistry.LIFEPO4, 4, TradeUnit.AMPERE_HOUR.toSi(20), 18_000, 1, 0, sure(charge), 0.1);
    }

    private static Estimate sure(double value) {
        return new Estimate(value, 0, List.of());
    }
}
