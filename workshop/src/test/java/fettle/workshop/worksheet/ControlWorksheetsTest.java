package fettle.workshop.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The engine's own tests hold the sums; these hold what is typed and what is printed. */
class ControlWorksheetsTest {
    private static final Map<String, String> LINKAGE = Map.of("arm", "10", "horn", "15 mm", "aft", "100");

    /** Geometry L2 of the reference folder's standards/linkage.csv: servo 45° gives 28.396723°. */
    @Test
    void linkageAnswersInDegreesAndMillimetres() {
        Sheet sheet = Worksheets.of("linkage").answer(with(LINKAGE, "low", "1050", "high", "1950"));

        assertThat(sheet.verdict()).startsWith("The surface goes from -27.8° to 28.4°");
        assertThat(Math.toDegrees(value(sheet, "surface_at_1950"))).isCloseTo(28.396723, within(1e-6));
        assertThat(sheet.caution()).contains("propeller off");
        assertThat(sheet.working().steps()).isNotEmpty();
    }

    @Test
    void throwsMayBeTypedInMillimetresAndComeBack() {
        Sheet ends = Worksheets.of("throws").answer(with(LINKAGE, "up", "12 mm", "down", "10°"));

        assertThat(value(ends, "up_edge")).isCloseTo(0.012, within(1e-9));
        assertThat(value(ends, "down_edge")).isCloseTo(-2 * 0.05 * Math.sin(Math.toRadians(5)), within(1e-9));
        assertThat(ends.verdict()).startsWith("Set 1");
    }

    @Test
    void linkageThatCannotCloseSaysHowFarItReaches() {
        assertThatThrownBy(() -> Worksheets.of("throws").answer(with(LINKAGE, "up", "70°", "down", "10°")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cannot reach 70.00°");
        InputException refused = catchThrowableOfType(
                InputException.class,
                () -> Worksheets.of("linkage")
                        .answer(Map.of("arm", "0.5", "horn", "15 kg", "aft", "100", "low", "300")));
        assertThat(refused.faults()).extracting(Fault::field).contains("arm", "horn");
    }

    /** Reference folder, standards/hinge_torque_cases.csv, thin-aerofoil bound: 0.278648 N·m, 2.84142 kgf·cm. */
    @Test
    void hingeWorksheetGivesTheReferenceTorque() {
        Sheet sheet = Worksheets.of("hinge")
                .answer(Map.of(
                        "chord",
                        "50",
                        "span",
                        "600",
                        "share",
                        "30 %",
                        "deflection",
                        "20°",
                        "attack",
                        "0°",
                        "speed",
                        "108 km/h",
                        "efficiency",
                        "100 %",
                        "torque",
                        "6 kg·cm"));

        assertThat(value(sheet, "hinge_moment")).isCloseTo(0.278648, within(1e-6));
        assertThat(sheet.verdict()).contains("2.84 kg·cm", "2.1 times");
    }

    @Test
    void servoPowerNamesWhatFallsShortAndWhatHelps() {
        Map<String, String> typed = Map.of(
                "servos",
                "left; 10 mA; 0.3 A; 1.5 A; 300 mm; 22; measured\nrudder; 10 mA; 0.3 A; 1.5 A; 1.2 m; AWG 26; data",
                "kind",
                "linear",
                "input",
                "12.6",
                "output",
                "5",
                "continuous",
                "1",
                "peak",
                "2",
                "capacity",
                "2000");
        Sheet sheet = Worksheets.of("servo-power").answer(typed);

        assertThat(value(sheet, "all_stalled_amps")).isCloseTo(3.1, within(1e-12));
        assertThat(sheet.verdict()).startsWith("Falls short");
        assertThat(sheet.notes()).anyMatch(note -> note.startsWith("A supply of twice the current"));
        assertThat(sheet.figures()).anyMatch(figure -> figure.key().equals("to_reserve"));
    }

    @Test
    void servoLinesAreRefusedByNumber() {
        assertThatThrownBy(() -> Worksheets.of("servo-power")
                        .answer(Map.of("servos", "left; 10 mA; 0.3 A\nright; 10 mA; 300; 1.5 A; 1 m; 22; data")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("line 1: 3 parts")
                .hasMessageContaining("line 2: moving current is \"300\", which has no unit");
    }

    @Test
    void holesComeFromThoseThereAre() {
        Sheet sheet = Worksheets.of("holes")
                .answer(Map.of(
                        "arms",
                        "8 10 mm; 12 14",
                        "horns",
                        "10 14 18",
                        "aft",
                        "100",
                        "directions",
                        "90",
                        "up",
                        "20",
                        "down",
                        "20"));

        assertThat(sheet.verdict())
                .startsWith("Arm 10.0 mm at 90°, horn 18.0 mm")
                .endsWith("12 tried.");
        assertThatThrownBy(() -> Worksheets.of("holes")
                        .answer(Map.of("arms", "8 x", "horns", "10", "aft", "100", "up", "20", "down", "20")))
                .hasMessageContaining("\"x\"");
    }

    @Test
    void matchTakesWhatIsLeftOutFromTheFirst() {
        Sheet same = Worksheets.of("match").answer(with(LINKAGE, "up", "20", "down", "20"));
        Sheet unlike = Worksheets.of("match").answer(with(LINKAGE, "up", "20", "down", "20", "arm-direction-2", "75"));

        assertThat(value(same, "mismatch_ends")).isCloseTo(0, within(1e-12));
        assertThat(value(unlike, "mismatch_ends")).isGreaterThan(2.5 * value(unlike, "mismatch_curve"));
        assertThat(unlike.verdict()).startsWith("5 points leave at most");
    }

    @Test
    void swashplateGivesThreePulsesAndNamesTheServoThatRunsOut() {
        Sheet sheet =
                Worksheets.of("swashplate").answer(Map.of("ball", "30", "arm", "15", "forward", "6°", "height", "2"));

        assertThat(sheet.verdict()).startsWith("Pulses: tail 1");
        assertThat(sheet.notes()).hasSize(3).last().asString().startsWith("Level at 5.0 mm: tail 1715 µs");
        assertThatThrownBy(() -> Worksheets.of("swashplate").answer(Map.of("ball", "30", "arm", "10", "height", "12")))
                .hasMessageContaining("servo tail");
    }

    @Test
    void signalThatDrivesAServoToItsStopIsToldFirst() {
        Sheet narrow =
                Worksheets.of("signal").answer(Map.of("servo-centre", "760", "servo-span", "250", "turn", "20°"));

        assertThat(narrow.verdict()).contains("drives the servo to its stop", "Do not connect it");
        assertThat(Worksheets.of("signal").answer(Map.of()).verdict()).startsWith("Nothing speaks against");
    }

    @Test
    void cablesTellTheirSlackAndATorqueRodItsTwist() {
        Sheet cables = Worksheets.of("linkage").answer(with(LINKAGE, "joined", "cables", "above", "5"));
        Sheet rod = Worksheets.of("linkage")
                .answer(Map.of("joined", "torque rod", "rod-length", "150", "rod-thickness", "2 mm"));

        assertThat(figures(cables)).contains("slack_low", "slack_high");
        // T·ℓ/(G·J), Timoshenko & Gere, Mechanics of Materials (4th ed. 1997), eq. 3-15; J = π·d⁴/32
        double expected = 0.0980665 * 0.150 / (79.3e9 * Math.PI * Math.pow(0.002, 4) / 32);
        assertThat(value(rod, "twist")).isCloseTo(expected, within(1e-9));
        assertThat(Math.toDegrees(value(rod, "surface_at_1900"))).isCloseTo(40, within(1e-9));
        assertThatThrownBy(() -> Worksheets.of("linkage").answer(Map.of("joined", "string")))
                .hasMessageContaining("expected one of pushrod, cables, torque rod");
    }

    @Test
    void measuredAnglesMayStandForEitherSurface() {
        String readings = "1100 -21,5\n1300; -10.4\n1500 0\n1700 10.1°\n1900 20.3";
        Sheet both = Worksheets.of("match")
                .answer(with(
                        LINKAGE,
                        "readings",
                        readings,
                        "readings-2",
                        readings,
                        "up",
                        "18",
                        "down",
                        "18",
                        "points",
                        "5"));
        Sheet one = Worksheets.of("match")
                .answer(with(LINKAGE, "readings-2", readings, "up", "18", "down", "18", "points", "9"));

        assertThat(value(both, "mismatch_curve")).isLessThan(Math.toRadians(0.3));
        assertThat(value(one, "mismatch_curve")).isLessThan(value(one, "mismatch_ends"));
        InputException refused = catchThrowableOfType(
                InputException.class,
                () -> Worksheets.of("match")
                        .answer(with(LINKAGE, "readings-2", "1100\n1500 0\n1900 x", "up", "18", "down", "18")));
        assertThat(refused.faults()).extracting(Fault::field).containsOnly("readings-2");
        assertThat(refused.faults()).extracting(Fault::sentence).anyMatch(fault -> fault.startsWith("line 1:"));
    }

    private static double value(Sheet sheet, String key) {
        return sheet.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }

    private static Map<String, String> with(Map<String, String> base, String... more) {
        Map<String, String> typed = new HashMap<>(base);
        for (int at = 0; at < more.length; at += 2) {
            typed.put(more[at], more[at + 1]);
        }
        return typed;
    }

    private static List<String> figures(Sheet sheet) {
        return sheet.figures().stream().map(Sheet.Figure::key).toList();
    }
}
