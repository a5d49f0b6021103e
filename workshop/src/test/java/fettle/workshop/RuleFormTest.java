package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RuleFormTest {
    @ParameterizedTest
    @CsvSource({
        "storage-time, 48, 172800",
        "storage-time, 48 h, 172800",
        "charge-limit, '4,15V', 4.15",
        "charge-coldest, -5C, 268.15",
        "imbalance-tend, 20 mV, 0.020",
        "reserve, 25%, 0.25"
    })
    void readsFiguresInTheRulesOwnUnit(String quantity, String typed, double si) {
        assertThat(new RuleForm("lipo", quantity, typed, "", "").toOverride().valueSi())
                .isCloseTo(si, within(1e-9));
    }

    @Test
    void keepsPackAndReason() {
        var change = new RuleForm("LiFePO4", "check-age", "30", " P07 ", "flown weekly").toOverride();

        assertThat(change.chemistry()).isEqualTo(Chemistry.LIFEPO4);
        assertThat(change.quantity()).isEqualTo(Quantity.CHECK_AGE);
        assertThat(change.packTag()).isEqualTo("P07");
        assertThat(change.reason()).isEqualTo("flown weekly");
    }

    @Test
    void tellsEveryFaultAtItsField() {
        assertThatThrownBy(() -> new RuleForm("coal", "storage-age", "48", "", "").toOverride())
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults())
                                .extracting(Fault::field)
                                .containsExactly("chemistry", "quantity"));
    }

    @ParameterizedTest
    @CsvSource({"48 mV", "two days", "''", "4..2"})
    void refusesAFigureOfAnotherMeasure(String typed) {
        assertThatThrownBy(() -> new RuleForm("LiPo", "storage-time", typed, "", "").toOverride())
                .isInstanceOf(InputException.class)
                .hasMessageContaining("in s or min or h or d");
    }
}
