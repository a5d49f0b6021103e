package fettle.engine.control.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.Remark;
import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TravelCurve;
import fettle.engine.control.servo.Servos;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoadedServoTest {
    private final SurfaceDrive drive = new SurfaceDrive(
            new FourBar(0.010, 0.015, 0.100, 0, Math.PI / 2, Math.PI / 2),
            Servos.wing().scale(),
            0.05);
    private final TravelCurve travel = drive.curve(1100e-6, 1900e-6, 40);

    @Test
    void torqueIsMomentTimesRatioOverEfficiencyAndHeaviestAtAnEnd() {
        AirLoad load = load(30, 0);
        LoadReport report =
                new LoadedServo(load, 0.8).over(travel, Servos.wing().ratings(), 6.0);

        ServoLoad end = report.heaviest();
        double ratio = Math.abs(end.point().position().ratio());
        assertThat(end.servoNewtonMetres())
                .isCloseTo(
                        load.designNewtonMetres(end.point().position().surfaceRadians()) * ratio / 0.8, within(1e-12));
        assertThat(end.point().pulseSeconds()).isIn(1100e-6, 1900e-6);
        assertThat(report.margin()).isCloseTo(report.stallNewtonMetres() / end.servoNewtonMetres(), within(1e-12));
        assertThat(report.working().steps()).hasSize(2);
    }

    @Test
    void designIsHeavierThanExpectedAndUncertainSpeedWidensBoth() {
        AirLoad sure = load(30, 0);
        AirLoad unsure = load(30, 3);

        assertThat(sure.designNewtonMetres(0.3))
                .isGreaterThan(sure.expectedNewtonMetres(0.3).value());
        assertThat(unsure.designNewtonMetres(0.3) / sure.designNewtonMetres(0.3))
                .isCloseTo(1.2 * 1.2, within(1e-9));
        assertThat(unsure.expectedNewtonMetres(0.3).standardDeviation())
                .isGreaterThan(sure.expectedNewtonMetres(0.3).standardDeviation());
    }

    @Test
    void saysWhenTheServoWouldStall() {
        LoadReport fast =
                new LoadedServo(load(80, 0), 0.85).over(travel, Servos.wing().ratings(), 4.8);

        assertThat(fast.margin()).isLessThan(1);
        assertThat(fast.remarks()).extracting(Remark::id).contains("stalls", "separated-flow");
    }

    @Test
    void refusesAVoltageTheServoHasNoDataFor() {
        assertThatThrownBy(() -> new LoadedServo(load(20, 0), 0.85)
                        .over(travel, Servos.wing().ratings(), 4.2))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("nothing is guessed");
    }

    @Test
    void steeringTakesAnEnteredTorque() {
        LoadReport report = new LoadedServo(EnteredLoad.measured(0.5, 0.2), 0.85)
                .over(travel, Servos.wing().ratings(), 6.0);

        assertThat(report.heaviest().hingeNewtonMetres()).isCloseTo(0.7, within(1e-12));
        assertThat(report.remarks()).extracting(Remark::id).doesNotContain("separated-flow");
    }

    @Test
    void refusesAllMovingSurfacesAndNegativeSpeeds() {
        assertThatThrownBy(() -> new AirLoad(0.05, 0.6, 1.0, new Estimate(30, 0, List.of()), 1.225, 0))
                .hasMessageContaining("100 %");
        assertThatThrownBy(() -> load(-1, 0)).hasMessageContaining("airspeed");
        assertThatThrownBy(() -> new LoadedServo(load(20, 0), 0)).hasMessageContaining("30 %");
    }

    private static AirLoad load(double speed, double deviation) {
        return new AirLoad(0.05, 0.6, 0.3, new Estimate(speed, deviation, List.of()), 1.225, Math.toRadians(4));
    }
}
