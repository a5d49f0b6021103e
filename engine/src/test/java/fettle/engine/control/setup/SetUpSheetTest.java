package fettle.engine.control.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.InputException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SetUpSheetTest {
    private static final Rate HIGH = new Rate("high", Math.toRadians(20), Math.toRadians(16));

    @Test
    void throwsInMillimetresAreMeasuredAtTheChord() {
        SurfaceSetting setting = setting("left aileron", 1500, List.of(HIGH), 0.3);

        // ruler: 2 · 50 mm · sin 10° = 17.365 mm
        assertThat(setting.upMetres(HIGH)).isCloseTo(0.017365, within(1e-6));
        assertThat(setting.differential(HIGH)).isCloseTo(1.25, within(1e-12));
        assertThat(setting.differentialWords(HIGH)).isEqualTo(", up over down 1.25");
        assertThat(setting.differentialWords(new Rate("low", 0.1, 0.1))).isEmpty();
        assertThat(setting.differentialWords(new Rate("brake", 0.5, 0))).isEqualTo(", up only");
    }

    @Test
    void tellsEveryDifferenceAndNothingElse() {
        Rate low = new Rate("low", 0.1, 0.1);
        SetUpSheet before = sheet(
                setting("left aileron", 1500, List.of(HIGH), 0.3), setting("rudder", 1520, List.of(HIGH, low), 0.3));
        SetUpSheet after = sheet(
                setting("left aileron", 1512, List.of(HIGH), null), setting("elevator", 1500, List.of(HIGH), 0.3));

        assertThat(after.since(before))
                .containsExactly(
                        new Difference("left aileron", "centre", "1500 µs", "1512 µs"),
                        new Difference("left aileron", "largest current", "0.30 A", "not on the sheet"),
                        new Difference("elevator", "surface", "not on the sheet", "added"),
                        new Difference("rudder", "surface", "on the sheet", "removed"));
        assertThat(after.since(after)).isEmpty();
    }

    @Test
    void checkListCoversDirectionCentreMovementRangeAndFailsafe() {
        assertThat(FirstRunCheck.inOrder())
                .contains(
                        FirstRunCheck.DIRECTION,
                        FirstRunCheck.CENTRE,
                        FirstRunCheck.FREE_MOVEMENT,
                        FirstRunCheck.RANGE,
                        FirstRunCheck.FAILSAFE)
                .allSatisfy(check -> assertThat(check.instruction()).isNotBlank());
    }

    @Test
    void refusesSheetsThatCannotBe() {
        SurfaceSetting rudder = setting("rudder", 1500, List.of(HIGH), null);
        assertThatThrownBy(() -> sheet(rudder, rudder))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> setting("rudder", 2600, List.of(), null))
                .hasMessageContaining("2600 µs")
                .hasMessageContaining("no throws")
                .hasMessageContaining("between its end points");
    }

    private static SetUpSheet sheet(SurfaceSetting... surfaces) {
        return new SetUpSheet("Heron", LocalDate.of(2026, 11, 25), List.of(surfaces), "");
    }

    private static SurfaceSetting setting(String name, double centreMicros, List<Rate> rates, Double amps) {
        return new SurfaceSetting(
                name,
                "wing servo",
                1100e-6,
                centreMicros * 1e-6,
                1900e-6,
                false,
                0.05,
                rates,
                0.010,
                0.015,
                0.01,
                amps,
                null);
    }
}
