package fettle.engine.health.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Loss in per cent after 365 days, table of battery/thermal-and-ageing.md; tolerance: the digits printed, and a thousandth where
 * parameters are printed to three digits. */
class ShelfFadeAgainstPublishedTableTest {
    @ParameterizedTest
    @CsvSource({
        "NMC_18650,0.5,3.70,25,2.39",
        "NMC_18650,0.5,3.85,5,0.57",
        "NMC_18650,0.5,3.85,25,3.05",
        "NMC_18650,1.0,4.20,25,4.57",
        "NMC_18650,1.0,4.20,45,19.88",
        "NCA_18650,0.3,3.6,25,3.01",
        "NCA_18650,0.5,3.7,5,1.78",
        "NCA_18650,0.5,3.7,25,3.81",
        "NCA_18650,1.0,4.2,45,12.94",
        "NMC_POUCH,0.3,3.6,25,0.33",
        "NMC_POUCH,0.5,3.85,15,0.44",
        "NMC_POUCH,0.5,3.85,25,1.01",
        "NMC_POUCH,1.0,4.2,45,20.56"
    })
    void meetsTheTable(ShelfFade model, double charge, double volts, double celsius, double perCent) {
        assertThat(100 * model.lossShare(365, 273.15 + celsius, charge, volts))
                .isCloseTo(perCent, within(Math.max(0.006, 0.001 * perCent)));
    }
}
