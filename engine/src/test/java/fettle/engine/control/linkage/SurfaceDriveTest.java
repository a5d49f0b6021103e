package fettle.engine.control.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import org.junit.jupiter.api.Test;

class SurfaceDriveTest {
    private static final PulseScale SCALE = new PulseScale(1500e-6, Math.toRadians(0.1) / 1e-6);

    /** Reference geometry L4: arm clocked 20°, servo ±30° gives 26.026393° and −20.688771° (standards/linkage.md). */
    private static final FourBar CLOCKED = new FourBar(0.010, 0.012, 0.100, 0, Math.toRadians(70), Math.toRadians(90));

    /** Reference geometry L8: toggles at 51.50° and −58.80°. */
    private static final FourBar LARGE_THROW = new FourBar(0.014, 0.012, 0.040, 0, Math.PI / 2, Math.PI / 2);

    @Test
    void movesTheTrailingEdgeAsARulerShowsIt() {
        // parallelogram: 30° of servo is 30° of surface, 2 · 50 mm · sin 15° = 25.882 mm
        SurfaceDrive drive = new SurfaceDrive(parallelogram(), SCALE, 0.050);

        TravelPoint point = drive.at(1800e-6);

        assertThat(Math.toDegrees(point.position().surfaceRadians())).isCloseTo(30, within(1e-9));
        assertThat(point.edgeMetres() * 1000).isCloseTo(25.882, within(5e-4));
        assertThat(Math.toDegrees(point.radiansPerPulseSecond()) * 1e-6).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void findsTheEndPointsOfWantedThrows() {
        SurfaceDrive drive = new SurfaceDrive(parallelogram(), SCALE, 0.050);

        EndPoints ends = drive.endPoints(Math.toRadians(25), Math.toRadians(10));

        assertThat(ends.up().pulseSeconds() * 1e6).isCloseTo(1750, within(1e-6));
        assertThat(ends.down().pulseSeconds() * 1e6).isCloseTo(1400, within(1e-6));
        assertThat(ends.working().steps()).hasSize(2);
        assertThat(ends.cautions()).contains(Caution.PROPELLER_OFF, Caution.LINKAGE_FREE, Caution.STOP_AT_BINDING);
    }

    @Test
    void clockedArmGivesDifferential() {
        TravelCurve curve = new SurfaceDrive(CLOCKED, SCALE, 0.05).curve(1200e-6, 1800e-6, 10);

        assertThat(curve.points()).hasSize(11);
        assertThat(curve.differential()).isGreaterThan(1.1);
    }

    @Test
    void refusesTravelPastAToggleAndSaysHowFar() {
        SurfaceDrive drive = new SurfaceDrive(LARGE_THROW, SCALE, 0.05);

        assertThatThrownBy(() -> drive.curve(1000e-6, 2400e-6, 10))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("past")
                .hasMessageContaining("in line");
    }

    @Test
    void refusesTravelPastADeadCentreOfTheArm() {
        // arm at 60° from aft: 60° clockwise the rod lies over the servo shaft
        FourBar leaning = new FourBar(0.010, 0.030, 0.100, 0, Math.toRadians(60), Math.PI / 2);
        SurfaceDrive drive = new SurfaceDrive(leaning, SCALE, 0.05);

        assertThatThrownBy(() -> drive.at(700e-6))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("rod and servo arm in line");
    }

    @Test
    void refusesToPassTheLineOfAParallelogram() {
        SurfaceDrive drive =
                new SurfaceDrive(parallelogram(), new PulseScale(1500e-6, Math.toRadians(0.2) / 1e-6), 0.05);

        assertThat(drive.linkage().range().marginRadians(Math.toRadians(60))).isCloseTo(Math.PI / 6, within(1e-9));
        assertThatThrownBy(() -> drive.at(2000e-6)).hasMessageContaining("arm, rod and horn in line");
    }

    @Test
    void warnsNearALimit() {
        TravelLimit limit = LARGE_THROW.range().ahead(1).orElseThrow();
        double near = SCALE.pulseSeconds(limit.servoRadians() - Math.toRadians(5));

        TravelCurve curve = new SurfaceDrive(LARGE_THROW, SCALE, 0.05).curve(1500e-6, near, 10);

        assertThat(Math.toDegrees(curve.marginRadians())).isCloseTo(5, within(1e-6));
        assertThat(curve.remarks()).extracting(Remark::id).contains("near-limit");
    }

    @Test
    void refusesThrowsTheSurfaceCannotReach() {
        FourBar shortArm = new FourBar(0.006, 0.020, 0.100, 0, Math.PI / 2, Math.PI / 2);

        assertThatThrownBy(() -> new SurfaceDrive(shortArm, SCALE, 0.05).endPoints(Math.toRadians(40), 0.1))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("cannot reach 40.00°");
    }

    @Test
    void refusesPulsesNoServoTakes() {
        SurfaceDrive drive = new SurfaceDrive(parallelogram(), SCALE, 0.05);

        assertThatThrownBy(() -> drive.at(450e-6)).hasMessageContaining("450 µs; expected 500 to 2500 µs");
        assertThatThrownBy(() -> drive.at(1500)).hasMessageContaining("expected 500 to 2500 µs");
    }

    @Test
    void refusesALinkageStraightAtNeutral() {
        assertThatThrownBy(() -> new FourBar(0.010, 0.015, 0.100, 0, Math.PI / 2, Math.atan2(-10, 100)))
                .isInstanceOf(InputException.class);
        assertThatThrownBy(() -> new FourBar(0.010, 0.015, 0.100, 0, 0, 0))
                .hasMessageContaining("in line with the arm or the horn");
        assertThatThrownBy(() -> new FourBar(0.0001, 0.5, 0.100, 0, 1.5, 1.5))
                .hasMessageContaining("servo arm")
                .hasMessageContaining("control horn");
    }

    @Test
    void addsJointAndGearPlayAtTheTrailingEdge() {
        SurfaceDrive drive = new SurfaceDrive(parallelogram(), SCALE, 0.060);

        // 0.12 mm on a 12 mm horn is 0.01 rad, and 1° of gear play at ratio 1: 60 mm · (0.01 + 0.017453)
        assertThat(drive.freePlayMetres(1500e-6, 0.00012, Math.toRadians(1)) * 1000)
                .isCloseTo(60 * (0.01 + Math.toRadians(1)), within(1e-3));
    }

    @Test
    void equalPullPullHasNoSlackAndSweptHornsDo() {
        PullPull equal = PullPull.straight(parallelogram());
        PullPull swept = new PullPull(
                new FourBar(0.012, 0.012, 0.3, 0, Math.PI / 2, Math.toRadians(100)),
                new FourBar(0.012, 0.012, 0.3, 0, -Math.PI / 2, Math.toRadians(-100)));

        assertThat(equal.slackMetres(0.5)).isCloseTo(0, within(1e-12));
        assertThat(equal.at(0.5).surfaceRadians()).isCloseTo(0.5, within(1e-12));
        assertThat(Math.abs(swept.slackMetres(0.5))).isGreaterThan(1e-4);
        assertThat(swept.servoRadians(swept.at(0.4).surfaceRadians())).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void straightArmsMayPointAft() {
        PullPull below = PullPull.straight(new FourBar(0.012, 0.012, 0, -0.300, 0, 0));

        assertThat(below.second().armNeutralRadians()).isCloseTo(Math.PI, within(1e-12));
        assertThat(below.at(0.4).surfaceRadians()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void refusesCablesThatPullAgainstEachOther() {
        assertThatThrownBy(() ->
                        new PullPull(parallelogram(), new FourBar(0.012, 0.012, 0.1, 0, -Math.PI / 2, Math.PI / 2)))
                .hasMessageContaining("opposite ways");
    }

    @Test
    void torqueRodTwistsUnderLoad() {
        TorqueRod rod = new TorqueRod(TorqueRod.Turning.WITH_SERVO, 0.2, 0.003, TorqueRod.STEEL_SHEAR_PASCALS);

        // J = π · 3⁴ / 32 mm⁴ = 7.952 mm⁴; 0.2 N·m · 0.2 m / (79.3 GPa · 7.952e-12 m⁴) = 0.06343 rad
        assertThat(rod.twistRadians(0.2)).isCloseTo(0.06343, within(5e-6));
        assertThat(rod.at(0.3).surfaceRadians()).isEqualTo(0.3);
    }

    @Test
    void throwInMillimetresComesBackAsDegrees() {
        double angle = TrailingEdge.surfaceRadians(0.05, TradeUnit.MILLIMETRE.toSi(12));

        assertThat(TrailingEdge.movementMetres(0.05, angle)).isCloseTo(0.012, within(1e-12));
        assertThatThrownBy(() -> TrailingEdge.surfaceRadians(0.01, 0.03)).hasMessageContaining("past a right angle");
    }

    private static FourBar parallelogram() {
        return new FourBar(0.012, 0.012, 0.100, 0, Math.PI / 2, Math.PI / 2);
    }
}
