package fettle.desk.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.desk.ShelfFixtures;
import fettle.desk.spread.SpreadStrip.Band;
import fettle.desk.spread.SpreadStrip.Lane;
import fettle.desk.spread.SpreadStrip.Tick;
import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.CellState;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SpreadStripTest {
    private static final double PRINTED = 0.005; // two decimals of a per cent

    @Test
    void putsEveryCellOnItsOwnLaneAtItsCharge() {
        Assessment found = ShelfFixtures.checked(3.84, 3.83, 3.85, 3.70);

        SpreadStrip strip = SpreadStrip.of(found, ShelfFixtures.lipoRules());

        assertThat(strip.lanes()).extracting(Lane::name).containsExactly("1", "2", "3", "4");
        for (int cell = 0; cell < 4; cell++) {
            CellState state = found.cells().get(cell);
            Lane lane = strip.lanes().get(cell);
            double charge = 100 * state.charge().value();
            double deviation = 100 * state.charge().standardDeviation();
            assertThat(at(lane)).isCloseTo(charge, within(PRINTED));
            assertThat(Double.parseDouble(lane.tick().low()))
                    .isCloseTo(Math.max(0, charge - deviation), within(PRINTED));
            assertThat(Double.parseDouble(lane.tick().high())).isCloseTo(charge + deviation, within(PRINTED));
            assertThat(lane.charge()).isEqualTo("%.0f ± %.0f %%".formatted(charge, deviation));
        }
        assertThat(strip.lanes().get(3).volts()).isEqualTo("3.700 V");
    }

    @Test
    void putsAllCellsOnOneLineInATable() {
        SpreadStrip strip = SpreadStrip.of(ShelfFixtures.checked(3.84, 3.83, 3.85), ShelfFixtures.lipoRules());

        assertThat(strip.ticks())
                .isEqualTo(strip.lanes().stream().map(Lane::tick).toList())
                .hasSize(3);
    }

    @Test
    void hatchesStorageBandAndReserveOfTheRulesInForce() {
        SpreadStrip strip = SpreadStrip.of(ShelfFixtures.checked(3.84, 3.84), ShelfFixtures.lipoRules());

        assertThat(strip.bands()).extracting(Band::kind).containsExactly("storage", "reserve");
        double low = ShelfFixtures.lipoRules().stream()
                .filter(rule -> rule.quantity().key().equals("storage-low"))
                .findFirst()
                .orElseThrow()
                .valueSi();
        assertThat(Double.parseDouble(strip.bands().get(0).from()))
                .isCloseTo(100 * DefaultCurves.of(Chemistry.LIPO).charge(low), within(PRINTED));
        assertThat(strip.bands().get(1).from()).isEqualTo("0.00");
    }

    @Test
    void keepsCellsAboveFullOrBelowEmptyOnTheAxis() {
        SpreadStrip strip = SpreadStrip.of(ShelfFixtures.checked(4.30, 2.00), List.of());

        assertThat(strip.ticks()).extracting(Tick::at).containsExactly("100.00", "0.00");
    }

    @Test
    void saysTheSameInWords() {
        SpreadStrip strip = SpreadStrip.of(ShelfFixtures.checked(3.84, 3.70, 3.95), ShelfFixtures.lipoRules());

        assertThat(strip.text())
                .matches("Cells run from \\d+ ± \\d+ % \\(cell 2\\) to \\d+ ± \\d+ % \\(cell 3\\)\\."
                        + " Storage band \\d+ to \\d+ %\\. Reserve below 20 %\\.");
    }

    @Test
    void showsThePackAsItIsNowWhereItWasChargedSinceTheCheck() {
        Assessment found = ShelfFixtures.chargedAfter(3.76, 3.77);

        SpreadStrip strip = SpreadStrip.of(found, List.of());

        assertThat(strip.lanes()).extracting(Lane::name).containsExactly("1", "2", "pack");
        assertThat(strip.lanes()).extracting(Lane::past).containsExactly(true, true, false);
        assertThat(strip.ticks()).containsExactly(strip.lanes().get(2).tick());
        assertThat(at(strip.lanes().get(2))).isGreaterThan(90);
        assertThat(strip.text())
                .matches("By the record since the check the pack is now at \\d+ ± \\d+ %; at the check,"
                        + " cells ran from \\d+ ± \\d+ % \\(cell 1\\) to \\d+ ± \\d+ % \\(cell 2\\)\\.");
    }

    @Test
    void saysThatChargeIsNotKnownOfAPackNeverChecked() {
        SpreadStrip strip = SpreadStrip.of(ShelfFixtures.neverChecked(), List.of());

        assertThat(strip.ticks()).isEmpty();
        assertThat(strip.text()).isEqualTo("Charge is not known.");
    }

    private static double at(Lane lane) {
        return Double.parseDouble(lane.tick().at());
    }
}
