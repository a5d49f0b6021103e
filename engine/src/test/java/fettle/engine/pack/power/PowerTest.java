package fettle.engine.pack.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.Doubt;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Driver;
import fettle.engine.units.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class PowerTest {
    private static final double COULOMBS = 5 * 3600.0;
    private static final double FREEZING = 273.15;
    private static final Limits LIPO = RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, null, List.of());

    @Test
    void theFirstSagIsCurrentTimesResistanceAndTheTimeChargeOverCurrent() {
        LoadAnswer answer = LoadAnswer.ofCurrent(pack(0.003, Doubt.NONE), LIPO, 20);
        assertThat(answer.firstSag().value()).isCloseTo(20 * (4 * 0.003 + 0.002), within(1e-9));
        assertThat(answer.binding()).startsWith("the reserve, 20 %");
        assertThat(answer.runTime().value()).isCloseTo(0.8 * COULOMBS / 20, within(0.01));
        assertThat(answer.left().value()).isCloseTo(0.2, within(1e-6));
    }

    @Test
    void chargeLeftAtTheReserveIsBeyondDoubt() {
        LoadAnswer answer = LoadAnswer.ofCurrent(pack(0.003, Doubt.USUAL), LIPO, 20);
        assertThat(answer.left().value()).isCloseTo(0.2, within(1e-6));
        assertThat(answer.left().standardDeviation()).isZero();
        assertThat(answer.runTime().standardDeviation()).isPositive();
    }

    @Test
    void aTiredPackStopsAtItsWeakestCellsVoltsAndKeepsTheRestOfItsCharge() {
        LoadAnswer answer = LoadAnswer.ofCurrent(pack(0.012, Doubt.NONE).withMass(5), LIPO, 35);
        assertThat(answer.binding()).startsWith("the weakest cell's volts under load");
        assertThat(answer.left().value()).isGreaterThan(0.21);
        assertThat(answer.lowestCell().value()).isCloseTo(3.3, within(0.31));
    }

    @Test
    void constantPowerDrawsItsPowerForItsTime() {
        LoadAnswer answer = LoadAnswer.ofPower(pack(0.003, Doubt.NONE), LIPO, 200);
        assertThat(answer.energy().value()).isCloseTo(200 * answer.runTime().value(), within(1.0));
    }

    @Test
    void aProfileOfOneCurrentIsThatCurrent() {
        PackModel pack = pack(0.003, Doubt.NONE);
        LoadAnswer steady = LoadAnswer.ofCurrent(pack, LIPO, 20);
        LoadAnswer parts = LoadAnswer.ofProfile(pack, LIPO, List.of(new ProfilePart(20, 60), new ProfilePart(20, 30)));
        assertThat(parts.runTime().value()).isCloseTo(steady.runTime().value(), within(0.01));
        assertThat(parts.energy().value())
                .isCloseTo(
                        steady.energy().value(), within(1e-4 * steady.energy().value()));
        assertThat(parts.binding()).isEqualTo(steady.binding());
    }

    @Test
    void aProfileDrawsItsMeanCurrentAndStopsAtTheReserve() {
        List<ProfilePart> parts = List.of(new ProfilePart(60, 20), new ProfilePart(0, 10), new ProfilePart(10, 90));
        LoadAnswer answer = LoadAnswer.ofProfile(pack(0.002, Doubt.NONE), LIPO, parts);
        assertThat(answer.binding()).startsWith("the reserve");
        assertThat(answer.drawn().value()).isCloseTo(0.8 * COULOMBS, within(1.0));
        double mean = (60 * 20 + 10 * 90) / 120.0;
        assertThat(answer.runTime().value()).isCloseTo(0.8 * COULOMBS / mean, within(120.0));
    }

    @Test
    void refusesAProfileThatDrawsNothing() {
        assertThatThrownBy(() -> LoadAnswer.ofProfile(
                        pack(0.003, Doubt.NONE), LIPO, List.of(new ProfilePart(0, 10), new ProfilePart(5, -1))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("part 2 lasts -1.0 s");
    }

    @Test
    void refusesALoadThatIsNone() {
        assertThatThrownBy(() -> LoadAnswer.ofCurrent(pack(0.003, Doubt.NONE), LIPO, -5))
                .isInstanceOf(InputException.class)
                .hasMessage("current is -5.0 A; expected more than 0 A.");
    }

    @Test
    void theSustainableCurrentJustReachesTheReserveAndALittleMoreDoesNot() {
        PackModel pack = pack(0.006, Doubt.NONE);
        SustainableCurrent answer = SustainableCurrent.of(pack, LIPO, 150);
        double amps = answer.amps().value();
        assertThat(LoadAnswer.ofCurrent(pack.withCharge(1), LIPO, amps).binding())
                .startsWith("the reserve");
        assertThat(LoadAnswer.ofCurrent(pack.withCharge(1), LIPO, 1.01 * amps).binding())
                .isEqualTo(answer.binding())
                .doesNotStartWith("the reserve");
        assertThat(answer.cRate().value()).isCloseTo(amps / 5, within(1e-9));
    }

    @Test
    void theSustainableCurrentFallsWithResistanceAndNamesItAsACauseOfDoubt() {
        SustainableCurrent fresh = SustainableCurrent.of(pack(0.003, Doubt.USUAL), LIPO, 150);
        SustainableCurrent tired = SustainableCurrent.of(pack(0.006, Doubt.USUAL), LIPO, 150);
        assertThat(tired.amps().value()).isLessThan(0.8 * fresh.amps().value());
        assertThat(tired.amps().drivers()).extracting(Driver::cause).contains("resistance", "temperature");
        assertThat(tired.amps().standardDeviation()).isPositive();
    }

    /** Arrhenius with 22 kJ/mol between 25 and 0 °C: exp(22000/8.314462618 · (1/273.15 − 1/298.15)) = 2.252. */
    @Test
    void theColdMultipliesTheFirstSagByArrheniusFactor() {
        ColdPack answer = ColdPack.of(pack(0.006, Doubt.NONE).withLead(0).withMass(5), LIPO, 30, FREEZING);
        assertThat(answer.coldSag().value() / answer.warmSag().value()).isCloseTo(2.252, within(0.001));
        assertThat(answer.cold().value()).isLessThan(answer.warm().value());
        assertThat(answer.warmUpKelvins().orElseThrow()).isBetween(FREEZING, 298.15);
    }

    private static PackModel pack(double ohms, Doubt doubt) {
        return PackModel.uniform("P07", Chemistry.LIPO, 4, COULOMBS, 1, ohms)
                .withLead(0.002)
                .withDoubt(doubt);
    }
}
