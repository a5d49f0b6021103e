package fettle.engine.control.swashplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SwashplateTest {
    private static final PulseScale SCALE = new PulseScale(1520e-6, TradeUnit.DEGREE.toSi(0.1) / 1e-6);
    private static final double RADIUS = 0.03;
    private static final double ARM = 0.015;

    @ParameterizedTest
    @ValueSource(doubles = {120, 135, 140})
    void pulsesAndBackGiveTheSamePlate(double layout) {
        Swashplate plate = Swashplate.withTailServo(Math.toRadians(layout), RADIUS, ARM, SCALE);
        Random random = new Random(42);
        for (int count = 0; count < 500; count++) {
            PlateAttitude wanted = new PlateAttitude(
                    0.004 * (2 * random.nextDouble() - 1),
                    Math.toRadians(8) * (2 * random.nextDouble() - 1),
                    Math.toRadians(8) * (2 * random.nextDouble() - 1));
            PlateAttitude back = plate.attitude(plate.pulses(wanted));
            assertThat(back.heightMetres()).isCloseTo(wanted.heightMetres(), within(1e-12));
            assertThat(back.forwardRadians()).isCloseTo(wanted.forwardRadians(), within(1e-9));
            assertThat(back.rightRadians()).isCloseTo(wanted.rightRadians(), within(1e-9));
        }
    }

    /** Plane geometry: at 120° a forward tilt moves the front balls half as far as the tail ball and the other way. */
    @ParameterizedTest
    @ValueSource(doubles = {120, 135, 140})
    void forwardTiltLiftsTheTailAndLowersTheFrontByTheCosine(double layout) {
        Swashplate plate = Swashplate.withTailServo(Math.toRadians(layout), RADIUS, ARM, SCALE);
        List<Double> pulses = plate.pulses(new PlateAttitude(0, Math.toRadians(6), 0));

        double lift = RADIUS * Math.tan(Math.toRadians(6));
        assertThat(pulses.get(0)).isCloseTo(SCALE.pulseSeconds(Math.asin(lift / ARM)), within(1e-12));
        double front = -lift * Math.cos(Math.toRadians(180 - layout));
        assertThat(pulses.get(1)).isCloseTo(SCALE.pulseSeconds(Math.asin(front / ARM)), within(1e-12));
        assertThat(pulses.get(2)).isCloseTo(pulses.get(1), within(1e-15));
    }

    /** Against a plane through the three balls by a general-purpose regression (Hipparchus 4.0.3), 1e-9. */
    @ParameterizedTest
    @ValueSource(doubles = {120, 135, 140})
    void plateIsThePlaneThroughTheThreeBalls(double layout) {
        Swashplate plate = Swashplate.withTailServo(Math.toRadians(layout), RADIUS, ARM, SCALE);
        Random random = new Random(7);
        for (int count = 0; count < 200; count++) {
            List<Double> pulses = random.doubles(3, 1320e-6, 1720e-6).boxed().toList();
            double[][] places = new double[3][];
            double[] heights = new double[3];
            for (int at = 0; at < 3; at++) {
                PlateServo servo = plate.servos().get(at);
                places[at] = new double[] {
                    RADIUS * Math.cos(servo.azimuthRadians()), RADIUS * Math.sin(servo.azimuthRadians())
                };
                heights[at] = ARM * Math.sin((pulses.get(at) - 1520e-6) * SCALE.radiansPerPulseSecond());
            }
            OLSMultipleLinearRegression plane = new OLSMultipleLinearRegression();
            plane.newSampleData(heights, places);
            double[] fitted = plane.estimateRegressionParameters();

            PlateAttitude found = plate.attitude(pulses);
            assertThat(found.heightMetres()).isCloseTo(fitted[0], within(1e-9));
            assertThat(Math.tan(found.forwardRadians())).isCloseTo(-fitted[1], within(1e-9));
            assertThat(Math.tan(found.rightRadians())).isCloseTo(-fitted[2], within(1e-9));
        }
    }

    /** A rigid plate turned about its centre draws its balls in; up to 8° their height differs by under 1 %. */
    @Test
    void rigidPlateDiffersByUnderOnePercentUpToEightDegrees() {
        double tilt = Math.toRadians(8);
        double rigid = RADIUS * Math.sin(tilt); // rotation matrix about the cross axis applied to (r, 0, 0)
        PlateServo nose = new PlateServo("nose", 0, RADIUS, ARM, SCALE);

        assertThat(nose.ballMetres(new PlateAttitude(0, tilt, 0))).isCloseTo(-rigid, within(0.01 * rigid));
    }

    @Test
    void rightTiltMovesOnlyTheSides() {
        Swashplate plate = Swashplate.withTailServo(Math.toRadians(120), RADIUS, ARM, SCALE);
        List<Double> pulses = plate.pulses(new PlateAttitude(0, 0, Math.toRadians(6)));

        assertThat(pulses.get(0)).isCloseTo(1520e-6, within(1e-12));
        assertThat(pulses.get(2)).isLessThan(1520e-6);
        assertThat(pulses.get(1)).isGreaterThan(1520e-6);
    }

    @Test
    void mixInProportionLosesLiftAtTheEndsAndCyclicLiftsALittle() {
        Swashplate plate = Swashplate.withTailServo(Math.toRadians(120), RADIUS, ARM, SCALE);

        PlateAttitude collective = plate.mixed(new PlateAttitude(0.008, 0, 0));
        // arm · sin(h / arm) by hand: 15 · (x − x³/6 + x⁵/120), x = 8 / 15, is 7.6261 mm
        assertThat(collective.heightMetres()).isCloseTo(0.0076261, within(1e-7));
        assertThat(collective.forwardRadians()).isCloseTo(0, within(1e-12));

        PlateAttitude both = plate.mixed(new PlateAttitude(0.005, Math.toRadians(8), 0));
        assertThat(Math.abs(both.heightMetres() - 0.005)).isGreaterThan(1e-4);
    }

    @Test
    void levellingSheetTrimsAwayUnequalArms() {
        Swashplate uneven = new Swashplate(List.of(
                new PlateServo("tail", Math.PI, RADIUS, 0.016, SCALE),
                new PlateServo("left", Math.toRadians(-60), RADIUS, ARM, SCALE),
                new PlateServo("right", Math.toRadians(60), RADIUS, ARM, SCALE)));

        LevellingSheet sheet = uneven.levelling(List.of(-0.006, 0.0, 0.006));

        assertThat(sheet.rows()).hasSize(3).allSatisfy(row -> {
            PlateAttitude level = uneven.attitude(row.pulseSeconds());
            assertThat(level.forwardRadians()).isCloseTo(0, within(1e-12));
            assertThat(level.rightRadians()).isCloseTo(0, within(1e-12));
        });
        assertThat(sheet.rows().get(1).trimSeconds())
                .allSatisfy(trim -> assertThat(trim).isCloseTo(0, within(1e-12)));
        assertThat(Math.abs(sheet.rows().get(2).untrimmed().forwardRadians())).isGreaterThan(1e-4);
    }

    @Test
    void namesTheServoThatRunsOut() {
        Swashplate plate = Swashplate.withTailServo(Math.toRadians(120), RADIUS, ARM, SCALE);

        assertThatThrownBy(() -> plate.pulses(new PlateAttitude(0.012, Math.toRadians(10), 0)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("servo tail")
                .hasMessageContaining("60°");
        assertThatThrownBy(() -> new Swashplate(List.of(plate.servos().get(0)))).hasMessageContaining("expected three");
        assertThatThrownBy(() -> new Swashplate(List.of(
                        plate.servos().get(0),
                        plate.servos().get(0),
                        plate.servos().get(1))))
                .hasMessageContaining("one line");
    }
}
