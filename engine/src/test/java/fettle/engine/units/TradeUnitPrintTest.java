package fettle.engine.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TradeUnitPrintTest {
    /** Minutes, ± minutes, decimals asked for, as printed. */
    @ParameterizedTest
    @CsvSource({
        "22, 2, 0, 22 ± 2 min",
        "1.2, 0.1, 0, 1.2 ± 0.1 min",
        "9.96, 0.4, 0, 10.0 ± 0.4 min",
        "5, 0.000001, 0, 5.00 ± 0.00 min",
        "5, 0, 0, 5 ± 0 min",
        "-0.2, 3, 0, 0 ± 3 min"
    })
    void anUncertaintyNeverReadsAsNoneForWantOfDecimals(
            double minutes, double deviation, int decimals, String printed) {
        Estimate estimate = new Estimate(minutes * 60, deviation * 60, List.of());
        assertThat(TradeUnit.MINUTE.print(estimate, decimals)).isEqualTo(printed);
    }

    @Test
    void milliIsExactlyRounded() {
        assertThat(TradeUnit.MILLIVOLT.toSi(3800)).isEqualTo(3.8);
        assertThat(TradeUnit.MILLIAMPERE.toSi(9)).isEqualTo(0.009);
        assertThat(TradeUnit.CELSIUS.toSi(25)).isEqualTo(298.15);
    }
}
