package fettle.engine.charge.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.model.Doubt;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Driver;
import fettle.engine.units.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class JoinAnswerTest {
    private static final double COULOMBS = 2 * 3600.0;
    private static final Limits LIPO = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());

    @Test
    void theFirstCurrentIsTheDifferenceOfRestVoltsOverAllResistance() {
        JoinAnswer answer = JoinAnswer.of(
                List.of(joined("P01", 3, 0.6, 0.005, 4), joined("P02", 3, 0.5, 0.008, 4)), LIPO, ChargeMeans.ofAmps(4));
        double ohms = 3 * (0.005 + 0.008) + 2 * 0.010;
        double amps = 3 * (volts(0.6) - volts(0.5)) / ohms;
        assertThat(answer.packs().get(0).first().value()).isCloseTo(amps, within(1e-6));
        assertThat(answer.packs().get(1).first().value()).isCloseTo(-amps, within(1e-6));
        assertThat(answer.mayJoin()).isEqualTo(amps <= 4);
        assertThat(answer.leadHeat().value()).isPositive();
    }

    @Test
    void packsCloseTogetherShareTheCurrentByResistance() {
        JoinAnswer answer = JoinAnswer.of(
                List.of(joined("P01", 3, 0.5, 0.005, 4), joined("P02", 3, 0.5, 0.005, 4)), LIPO, ChargeMeans.ofAmps(4));
        assertThat(answer.mayJoin()).isTrue();
        assertThat(answer.packs())
                .allSatisfy(pack -> assertThat(pack.chargeShare()).isCloseTo(0.5, within(1e-9)));
        assertThat(answer.sharedCharge()).isPresent();
        assertThat(answer.first()).isEmpty();
    }

    @Test
    void packsTooFarApartAreRefusedWithWhatToBringCloser() {
        JoinAnswer answer = JoinAnswer.of(
                List.of(joined("P01", 3, 0.95, 0.003, 4), joined("P02", 3, 0.3, 0.003, 4)),
                LIPO,
                ChargeMeans.ofAmps(4));
        assertThat(answer.mayJoin()).isFalse();
        assertThat(answer.sharedCharge()).isEmpty();
        JoinAnswer.Closer first = answer.first().orElseThrow();
        double ohms = 2 * (3 * 0.003 + 0.010);
        double other = 3 * volts(first.name().equals("P01") ? 0.3 : 0.95);
        assertThat(Math.abs(first.towardsVolts() - other)).isCloseTo(4 * ohms, within(1e-9));
    }

    @Test
    void aCurrentThatMightPassTheLimitIsNotAllowed() {
        List<JoinAnswer.Joined> sure = List.of(joined("P01", 3, 0.52, 0.005, 4), joined("P02", 3, 0.5, 0.005, 4));
        List<JoinAnswer.Joined> unsure = sure.stream()
                .map(one -> new JoinAnswer.Joined(one.pack().withDoubt(Doubt.USUAL), one.chargeAmps()))
                .toList();
        assertThat(JoinAnswer.of(sure, LIPO, ChargeMeans.ofAmps(4)).mayJoin()).isTrue();
        JoinAnswer answer = JoinAnswer.of(unsure, LIPO, ChargeMeans.ofAmps(4));
        assertThat(answer.mayJoin()).isFalse();
        assertThat(answer.packs().get(0).first().drivers())
                .extracting(Driver::cause)
                .contains("charge at the start of P01", "charge at the start of P02");
    }

    @Test
    void refusesUnlikeChemistryAndUnlikeCellCount() {
        var lipo = joined("P01", 3, 0.5, 0.005, 4);
        var lihv = new JoinAnswer.Joined(PackModel.uniform("H01", Chemistry.LIHV, 3, COULOMBS, 0.5, 0.005), 4);
        assertThatThrownBy(() -> JoinAnswer.of(List.of(lipo, lihv), LIPO, ChargeMeans.ofAmps(4)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("H01 is LiHV, P01 is LiPo; packs of unlike chemistry are never joined");
        assertThatThrownBy(() ->
                        JoinAnswer.of(List.of(lipo, joined("P03", 4, 0.5, 0.005, 4)), LIPO, ChargeMeans.ofAmps(4)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("P03 has 4 cells, P01 has 3");
        assertThatThrownBy(() -> JoinAnswer.of(List.of(lipo), LIPO, ChargeMeans.ofAmps(4)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("at least two");
    }

    private static double volts(double charge) {
        return DefaultCurves.of(Chemistry.LIPO).volts(charge);
    }

    private static JoinAnswer.Joined joined(String name, int cells, double charge, double ohms, double amps) {
        return new JoinAnswer.Joined(
                PackModel.uniform(name, Chemistry.LIPO, cells, COULOMBS, charge, ohms)
                        .withLead(0.010)
                        .withDoubt(Doubt.NONE),
                amps);
    }
}
