package fettle.engine.charge.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.Doubt;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Balancer;
import fettle.engine.pack.simulation.CellEnd;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Driver;
import fettle.engine.units.InputException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChargeAnswerTest {
    private static final double AMPERE_HOURS = 5 * 3600.0;
    private static final Limits LIPO = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());

    @Test
    void withoutResistanceTimeIsChargeOverCurrentAndEnergyTheAreaUnderTheCurve() {
        PackModel pack = pack(4, 0.4, 1e-5);
        ChargeAnswer answer = ChargeAnswer.of(pack, LIPO, ChargeMeans.ofAmps(5));
        double coulombs = 0.6 * AMPERE_HOURS;
        double joules = coulombs * 4 * meanVolts(0.4, 1);
        assertThat(answer.duration().value()).isCloseTo(coulombs / 5, within(0.01 * coulombs / 5));
        assertThat(answer.returned().value()).isCloseTo(coulombs, within(0.005 * coulombs));
        assertThat(answer.sourceEnergy().value() * ChargeMeans.USUAL_EFFICIENCY)
                .isCloseTo(joules, within(0.005 * joules));
    }

    @Test
    void noCellPassesItsLimitEvenWhereOneIsFuller() {
        PackModel even = pack(3, 0.4, 0.003);
        PackModel pack = even.withCells(
                List.of(even.cells().get(0), even.cells().get(1), new CellModel(0.46, AMPERE_HOURS, 0.003)));
        ChargeAnswer answer = ChargeAnswer.of(pack, LIPO, ChargeMeans.ofAmps(5));
        assertThat(answer.packVolts()).isLessThan(12.6);
        assertThat(answer.cells()).extracting(CellEnd::volts).allMatch(volts -> volts <= 4.2 + 1e-9);
        assertThat(answer.spread().value()).isGreaterThan(0.02);
    }

    @Test
    void aWeakSourceBindsByPowerAndTheWorkingSaysSo() {
        ChargeMeans means = new ChargeMeans(5, 200, 60, 0.85, 0.25, Optional.empty());
        ChargeAnswer answer = ChargeAnswer.of(pack(4, 0.4, 0.003), LIPO, means);
        assertThat(answer.phases())
                .extracting(ChargeAnswer.Phase::limit)
                .containsExactly("the power limit", "the voltage limit");
        assertThat(answer.working().steps().get(1).result()).isEqualTo("51 W");
        assertThat(answer.phases().stream()
                        .mapToDouble(ChargeAnswer.Phase::seconds)
                        .sum())
                .isCloseTo(
                        answer.duration().value(),
                        within(1e-6 * answer.duration().value()));
    }

    @Test
    void halfTheCurrentTakesLongerAndStaysCooler() {
        ChargeAnswer.Slower slower =
                ChargeAnswer.of(pack(4, 0.2, 0.01), LIPO, ChargeMeans.ofAmps(5)).slower();
        assertThat(slower.amps()).isEqualTo(2.5);
        assertThat(slower.moreSeconds()).isPositive();
        assertThat(slower.lessHeatJoules()).isPositive();
        assertThat(slower.coolerKelvins()).isPositive();
    }

    @Test
    void everyCauseOfDoubtAddsToTheTime() {
        PackModel pack = pack(4, 0.4, 0.003).withDoubt(Doubt.USUAL);
        var time = ChargeAnswer.of(pack, LIPO, ChargeMeans.ofAmps(5)).duration();
        assertThat(time.drivers())
                .extracting(Driver::cause)
                .contains("charge at the start", "capacity", "resistance", "rest-voltage curve");
        // 3 % of 5 Ah at 5 A is 108 s, 5 % of 3 Ah is 108 s.
        assertThat(time.standardDeviation()).isBetween(130.0, 260.0);
    }

    @Test
    void refusesAPackOutsideItsChargingTemperatureAndNimh() {
        PackModel cold = pack(4, 0.4, 0.003).at(271.15, 298.15);
        assertThatThrownBy(() -> ChargeAnswer.of(cold, LIPO, ChargeMeans.ofAmps(5)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("at -2 °C; charge it only between 0 °C and");
        PackModel nimh = PackModel.uniform("N1", Chemistry.NIMH, 6, AMPERE_HOURS, 0.4, 0.003);
        assertThatThrownBy(() -> ChargeAnswer.of(nimh, LIPO, ChargeMeans.ofAmps(5)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("does not charge to a voltage");
    }

    @Test
    void balancingAtRestTakesTheChargeDifferenceOverTheBleedCurrent() {
        PackModel even = pack(2, 0.5, 0.003);
        PackModel pack = even.withCells(List.of(even.cells().get(0), new CellModel(0.52, AMPERE_HOURS, 0.003)));
        BalanceAnswer answer = BalanceAnswer.of(pack, LIPO, ChargeMeans.ofAmps(5), new Balancer(0.5, 0.8, 0.002));
        assertThat(answer.bleedCoulombs())
                .satisfiesExactly(
                        none -> assertThat(none).isZero(),
                        most -> assertThat(most).isCloseTo(0.02 * AMPERE_HOURS, within(1e-6)));
        assertThat(answer.before().value()).isCloseTo(0.02 * AMPERE_HOURS / 0.4, within(1e-6));
        assertThat(answer.during().value())
                .isLessThan(answer.before().value() + answer.chargeAfter().value());
    }

    private static double meanVolts(double from, double to) {
        int pieces = 2000;
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            sum += DefaultCurves.of(Chemistry.LIPO).volts(from + (to - from) * (i + 0.5) / pieces);
        }
        return sum / pieces;
    }

    private static PackModel pack(int cells, double charge, double ohms) {
        return PackModel.uniform("P07", Chemistry.LIPO, cells, AMPERE_HOURS, charge, ohms)
                .withDoubt(Doubt.NONE);
    }
}
