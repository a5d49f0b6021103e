package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.workshop.worksheet.CraftPower;
import fettle.workshop.worksheet.LinkageStudy;
import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.SurfaceStudy;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetUpsTest {
    private static final String ELEVATOR =
            "elevator; wing; 1100 1500 1900; 50 mm; high 20/20; arm 10; horn 15; pushrod aft 100 above 0 arm 90 horn 90";
    private static final String RUDDER =
            "rudder; wing; 1100 1500 1900; 80 mm; all 25/25; arm 12; horn 14; cables aft 420";
    private static final String STEERING =
            "steering; strong; 1200 1500 1800; 40 mm; all 20/20; torque-rod length 60 diameter 4 against";

    @TempDir
    private Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        workshop = WorkshopFixtures.open(folder);
        workshop.craft().add(new Craft("Wren", CraftKind.PLANE, null, "", null, null, "", ""));
        workshop.servos()
                .add(new ServoForm(
                                "wing",
                                "",
                                "",
                                "",
                                "",
                                "",
                                "4.8V 4kgcm 0.15s idle 8mA moving 0.2A stall 1.4A; 6V 5kgcm"
                                        + " 0.12s idle 9mA moving 0.3A stall 1.8A")
                        .toServo());
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void linkagesAreKeptWithTheirSurfacesAndComeBackAsTyped() {
        workshop.setUps().add("Wren", String.join("\n", ELEVATOR, RUDDER, STEERING), null, "");
        workshop.close();
        workshop = WorkshopFixtures.open(folder);

        KeptSheet kept = workshop.setUps().latest("wren");
        assertThat(kept.sheet().surfaces().stream().map(SurfaceSetting::linkage))
                .hasExactlyElementsOfTypes(FourBar.class, PullPull.class, TorqueRod.class);
        assertThat(SurfaceText.parse(String.join("\n", kept.typed())))
                .isEqualTo(kept.sheet().surfaces());
        assertThat(kept.typed().get(2)).contains("torque-rod length 60 diameter 4 against");
    }

    @Test
    void laterSheetTellsThatTheLinkageDiffers() {
        workshop.setUps().add("Wren", ELEVATOR, null, "");
        workshop.setUps().add("Wren", ELEVATOR.replace("aft 100", "aft 104"), null, "");

        assertThat(workshop.setUps().of("Wren").get(0).differences())
                .singleElement()
                .satisfies(difference -> assertThat(difference.before()).contains("hinge 100.0 mm aft"))
                .satisfies(difference -> assertThat(difference.after()).contains("hinge 104.0 mm aft"));
    }

    @Test
    void faultyLinkagesAreRefusedWithTheirLine() {
        assertThatThrownBy(() -> workshop.setUps()
                        .add(
                                "Wren",
                                ELEVATOR.replace("; horn 15", "") + "\n" + RUDDER + "; pushrod aft 3\n"
                                        + STEERING.replace("length", "long"),
                                null,
                                ""))
                .hasMessageContaining("line 1: a pushrod needs both holes")
                .hasMessageContaining("line 2: a surface has one linkage")
                .hasMessageContaining("line 3: \"long\" is none of length, diameter");
    }

    /** Geometry L2 of the reference folder's standards/linkage.csv: 25.574098° at a servo angle of 40°. */
    @Test
    void surfaceIsWorkedOutThroughItsLinkageAndItsServosData() {
        workshop.setUps().add("Wren", ELEVATOR, null, "");

        Sheet sheet = SurfaceStudy.of(workshop, "Wren", "Elevator")
                .answer(Map.of("volts", "5.4V", "speed", "30 m/s", "span", "300 mm"));

        assertThat(Math.toDegrees(value(sheet, "high_angle"))).isCloseTo(25.574098, within(1e-5));
        // half-way between the two voltages of the servo's data: (4 + 5) / 2 kgf·cm
        assertThat(value(sheet, "stall_torque")).isCloseTo(4.5 * 0.0980665, within(1e-9));
        // 80° of servo at (0.15 + 0.12)/2 of 60°, speeds interpolated
        double speed = (Math.PI / 3 / 0.15 + Math.PI / 3 / 0.12) / 2;
        assertThat(value(sheet, "travel_time")).isCloseTo(Math.toRadians(80) / speed, within(1e-9));
        assertThat(value(sheet, "torque_margin"))
                .isCloseTo(value(sheet, "stall_torque") / value(sheet, "design_torque"), within(1e-9));
        assertThat(sheet.notes()).anyMatch(note -> note.contains("No sweep"));
        assertThatThrownBy(() -> SurfaceStudy.of(workshop, "Wren", "elevator").answer(Map.of("volts", "8.4V")))
                .hasMessageContaining("nothing is guessed beyond the data");
        assertThatThrownBy(() -> SurfaceStudy.of(workshop, "Wren", "flap")).hasMessageContaining("there are elevator");
    }

    @Test
    void steeringTakesAMeasuredMomentAndSaysWhatIsOutOfReach() {
        workshop.servos().add(new ServoForm("strong", "", "", "", "", "", "6V 20kgcm; 7.4V 25kgcm").toServo());
        workshop.setUps().add("Wren", STEERING.replace("20/20", "20/80"), null, "");

        Sheet sheet = SurfaceStudy.of(workshop, "Wren", "steering")
                .answer(Map.of("volts", "6V", "moment", "4 kgcm", "unsure", "10 %", "efficiency", "100 %"));

        // design for two standard deviations: 4 · 1.2 kgf·cm
        assertThat(value(sheet, "design_torque")).isCloseTo(4.8 * 0.0980665, within(1e-9));
        assertThat(Math.toDegrees(value(sheet, "low_angle"))).isCloseTo(30, within(1e-9));
        assertThatThrownBy(() -> SurfaceStudy.of(workshop, "Wren", "steering")
                        .answer(Map.of("volts", "6V", "moment", "4 kgcm", "speed", "10 m/s")))
                .hasMessageContaining("Give one of them");
    }

    @Test
    void powerTakesSweepsFirstThenDataThenAssumesAndSaysSo() {
        workshop.setUps()
                .add("Wren", String.join("\n", ELEVATOR, RUDDER, STEERING.replace("strong", "unknown")), null, "");
        List<SweepPoint> points = IntStream.rangeClosed(0, 60)
                .mapToObj(step -> new SweepPoint(1e-6 * (1200 + 10 * step), 0.15 + 0.002 * (step % 2)))
                .toList();
        workshop.setUps().keep("Wren", "rudder", "rudder.csv", new Sweep(points, 0.011, null));

        Sheet sheet = CraftPower.of(workshop, "Wren")
                .answer(Map.of("input", "12.6", "output", "6", "continuous", "3", "peak", "5"));

        assertThat(sheet.notes())
                .contains(
                        "Taken: elevator; 0.009 A; 0.3 A; 1.8 A; 300 mm; 26; data.",
                        "Taken: steering; 0.01 A; 0.25 A; 1.2 A; 300 mm; 26; assumed.")
                .anyMatch(note -> note.startsWith("Taken: rudder; 0.011 A; 0.15") && note.endsWith("; measured."));
        // all three at stall, and the receiver's 0.1 A
        assertThat(value(sheet, "all_stalled_amps")).isCloseTo(1.8 + 1.8 + 1.2 + 0.1, within(1e-9));
    }

    @Test
    void drawingBeginsFromTheSheet() {
        workshop.setUps().add("Wren", String.join("\n", ELEVATOR, STEERING), null, "");

        LinkageStudy study =
                LinkageStudy.of(LinkageStudy.typed(workshop, "wren", "Elevator").orElseThrow());
        LinkageStudy steering =
                LinkageStudy.of(LinkageStudy.typed(workshop, "wren", "steering").orElseThrow());

        assertThat(study.drive())
                .isEqualTo(workshop.setUps()
                        .surface("Wren", "elevator")
                        .drive(study.drive().scale())
                        .orElseThrow());
        assertThat(steering.rods()).isEmpty();
        assertThat(steering.drive().surfaceRadians(1600e-6)).isNegative();
        assertThat(LinkageStudy.typed(workshop, "wren", "flap")).isEmpty();
    }

    private static double value(Sheet sheet, String key) {
        return sheet.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " is not in " + sheet.figures()))
                .value()
                .value();
    }
}
