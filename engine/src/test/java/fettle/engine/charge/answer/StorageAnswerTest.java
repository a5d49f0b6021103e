package fettle.engine.charge.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class StorageAnswerTest {
    private static final double COULOMBS = 2 * 3600.0;
    private static final Limits LIPO = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());
    private static final double LOW = DefaultCurves.of(Chemistry.LIPO).charge(LIPO.si(Quantity.STORAGE_LOW));
    private static final double HIGH = DefaultCurves.of(Chemistry.LIPO).charge(LIPO.si(Quantity.STORAGE_HIGH));

    @Test
    void drawsAFullPackDownToTheTopOfTheBandAtThePortsPower() {
        StorageAnswer answer = StorageAnswer.of(pack(1, 1, 1), LIPO, new StorageAnswer.Means(2, 11.1, 50));
        double drawn = (1 - HIGH) * COULOMBS;
        assertThat(answer.drawn().value()).isCloseTo(drawn, within(1e-6));
        assertThat(answer.amps()).isCloseTo(1.0, within(1e-12));
        assertThat(answer.duration().value()).isCloseTo(drawn, within(1e-3));
        assertThat(answer.binding()).startsWith("port power 11 W");
        assertThat(answer.inBand()).isTrue();
    }

    @Test
    void chargesAnEmptyPackUpToTheBottomOfTheBand() {
        StorageAnswer answer = StorageAnswer.of(pack(0.1, 0.12, 0.11), LIPO, new StorageAnswer.Means(2, 30, 50));
        assertThat(answer.drawn().value()).isCloseTo((0.1 - LOW) * COULOMBS, within(1e-6));
        assertThat(answer.binding()).startsWith("current 2.00 A");
    }

    @Test
    void leavesNoCellBelowTheBandAndSaysThatOthersAreStillAbove() {
        StorageAnswer answer = StorageAnswer.of(pack(LOW + 0.05, 0.95, 0.95), LIPO, new StorageAnswer.Means(2, 30, 50));
        assertThat(answer.drawn().value()).isCloseTo(0.05 * COULOMBS, within(1e-6));
        assertThat(answer.cellCharges()).allMatch(charge -> charge > LOW - 1e-6);
        assertThat(answer.inBand()).isFalse();
    }

    @Test
    void leavesAPackInTheBandAlone() {
        double middle = 0.5 * (LOW + HIGH);
        StorageAnswer answer = StorageAnswer.of(pack(middle, middle, middle), LIPO, new StorageAnswer.Means(2, 30, 50));
        assertThat(answer.drawn().value()).isZero();
        assertThat(answer.inBand()).isTrue();
    }

    private static PackModel pack(double... charges) {
        PackModel even = PackModel.uniform("P07", Chemistry.LIPO, charges.length, COULOMBS, 0.5, 0.005);
        return even.withCells(Arrays.stream(charges)
                .mapToObj(charge -> new CellModel(charge, COULOMBS, 0.005))
                .toList());
    }
}
