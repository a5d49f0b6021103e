package fettle.engine.supply.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.TradeUnit;
import org.junit.jupiter.api.Test;

/** Wire against the reference folder's standards/awg.csv, iec60228.csv and wire_drop_cases.csv. */
class WireAgainstPublishedTableTest {
    /** Published table (Georgia State University, after Floyd): printed to four figures, 0.05 %. */
    @Test
    void awgResistanceMatchesThePublishedTable() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/awg.csv")) {
            Conductor wire = Conductor.awg(Integer.parseInt(row[0]));
            assertThat(1000 * wire.ohmsPerMetre(TradeUnit.CELSIUS.toSi(20)))
                    .as("AWG " + row[0])
                    .isCloseTo(number(row[7]), within(5e-4 * number(row[7])));
            assertThat(1000 * wire.ohmsPerMetre(TradeUnit.CELSIUS.toSi(80)))
                    .as("AWG " + row[0] + " at 80 °C")
                    .isCloseTo(number(row[5]), within(2e-5 * number(row[5])));
            assertThat(wire.areaSquareMetres() * 1e6).isCloseTo(number(row[2]), within(1e-6));
            rows++;
        }
        assertThat(rows).isEqualTo(27);
    }

    /** IEC 60228 class 5 plain maxima, as three secondary copies give them. */
    @Test
    void strandedBoundCoversTheClassFiveMaxima() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/iec60228.csv")) {
            double solid =
                    1000 * Conductor.ofSquareMillimetres(number(row[0])).ohmsPerMetre(TradeUnit.CELSIUS.toSi(20));
            assertThat(number(row[2]) / solid)
                    .as(row[0] + " mm²")
                    .isBetween(1.0, Conductor.STRANDED_MOST)
                    .isCloseTo(number(row[4]), within(1e-4));
            rows++;
        }
        assertThat(rows).isEqualTo(10);
    }

    /** Computed cases; tolerance half the last digit printed. */
    @Test
    void loopAndDropMatchTheCases() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/wire_drop_cases.csv")) {
            Lead lead = new Lead(
                    Conductor.awg(Integer.parseInt(row[1])), number(row[2]), TradeUnit.CELSIUS.toSi(number(row[4])), 0);
            assertThat(lead.solidOhms()).as(row[0]).isCloseTo(number(row[6]), within(1e-8));
            assertThat(lead.solidOhms() * number(row[3])).as(row[0]).isCloseTo(number(row[7]), within(1e-6));
            assertThat(lead.dropVolts(number(row[3])).value())
                    .isBetween(number(row[7]), Conductor.STRANDED_MOST * number(row[7]));
            rows++;
        }
        assertThat(rows).isEqualTo(12);
    }

    @Test
    void refusesWiresThereAreNot() {
        assertThatThrownBy(() -> Conductor.awg(55)).hasMessageContaining("AWG 55");
        assertThatThrownBy(() -> Conductor.ofSquareMillimetres(0)).hasMessageContaining("mm²");
        assertThatThrownBy(() -> new Lead(Conductor.awg(22), -1, 293.15, 0)).hasMessageContaining("length");
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }
}
