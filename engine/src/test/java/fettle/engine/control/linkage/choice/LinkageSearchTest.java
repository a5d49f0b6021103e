package fettle.engine.control.linkage.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.Caution;
import fettle.engine.units.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class LinkageSearchTest {
    private static final List<Double> SQUARE = List.of(Math.PI / 2);

    @Test
    void takesTheHolesThatUseTheServoTravel() {
        LinkageChoices choices = LinkageSearch.search(
                fittings(List.of(0.008, 0.010, 0.012, 0.014), List.of(0.010, 0.014, 0.018), SQUARE), throwsOf(20, 20));

        LinkageChoice best = choices.bestFirst().get(0);
        // 20° of surface by at most 45° of servo: the 8 mm arm only reaches 18.3° on the 18 mm horn
        assertThat(best.linkage().armMetres()).isEqualTo(0.010);
        assertThat(best.linkage().hornMetres()).isEqualTo(0.018);
        assertThat(choices.bestFirst())
                .extracting(LinkageChoice::peakTorqueRatio)
                .isSorted();
        assertThat(choices.tried()).isEqualTo(12);
        assertThat(choices.cautions()).contains(Caution.POWER_OFF);
    }

    @Test
    void everyChoiceReachesBothThrowsWithinTheServoTravel() {
        LinkageChoices choices = LinkageSearch.search(
                fittings(List.of(0.010, 0.014, 0.018), List.of(0.010, 0.014), SQUARE), throwsOf(25, 15));

        assertThat(choices.bestFirst()).isNotEmpty().allSatisfy(choice -> {
            assertThat(choice.linkage().at(choice.upServoRadians()).surfaceRadians())
                    .isCloseTo(Math.toRadians(25), within(1e-9));
            assertThat(choice.linkage().at(choice.downServoRadians()).surfaceRadians())
                    .isCloseTo(Math.toRadians(-15), within(1e-9));
            assertThat(Math.abs(choice.upServoRadians())).isLessThanOrEqualTo(Math.toRadians(45));
        });
    }

    @Test
    void clocksTheArmForUnequalThrows() {
        List<Double> clockings = List.of(Math.toRadians(60), Math.toRadians(75), Math.PI / 2, Math.toRadians(105));

        LinkageChoice best = LinkageSearch.search(fittings(List.of(0.010), List.of(0.012), clockings), throwsOf(25, 15))
                .bestFirst()
                .get(0);

        assertThat(best.linkage().armNeutralRadians()).isNotEqualTo(Math.PI / 2);
    }

    @Test
    void saysHowFarTheClosestCombinationGets() {
        assertThatThrownBy(
                        () -> LinkageSearch.search(fittings(List.of(0.008), List.of(0.020), SQUARE), throwsOf(40, 40)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("arm 8.0 mm and horn 20.0 mm")
                .hasMessageContaining("reaches 17.0° up and 15.8° down");
    }

    @Test
    void passesOverClockingsThatStandInLine() {
        List<Double> clockings = List.of(Math.atan2(0.012, 0.1), Math.PI / 2);

        LinkageChoices choices =
                LinkageSearch.search(fittings(List.of(0.010), List.of(0.012), clockings), throwsOf(20, 20));

        assertThat(choices.tried()).isEqualTo(2);
        assertThat(choices.bestFirst()).hasSize(1);
        assertThatThrownBy(() -> LinkageSearch.search(
                        fittings(List.of(0.010), List.of(0.012), clockings.subList(0, 1)), throwsOf(20, 20)))
                .hasMessageContaining("in line");
    }

    @Test
    void asksForHoles() {
        assertThatThrownBy(() -> fittings(List.of(), List.of(), SQUARE))
                .hasMessageContaining("servo arm")
                .hasMessageContaining("horn");
    }

    private static WantedThrows throwsOf(double upDegrees, double downDegrees) {
        return new WantedThrows(Math.toRadians(upDegrees), Math.toRadians(downDegrees));
    }

    private static Fittings fittings(List<Double> arm, List<Double> horn, List<Double> clockings) {
        return new Fittings(arm, horn, clockings, Math.PI / 2, 0.100, 0, Math.toRadians(45));
    }
}
