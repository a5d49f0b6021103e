package fettle.engine.control.matching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.TradeUnit;
import org.junit.jupiter.api.Test;

class SurfaceMatchingTest {
    private static final double SLOPE = TradeUnit.DEGREE.toSi(0.1) / 1e-6;

    private final SurfaceDrive left = drive(90, 90, SLOPE);
    private final SurfaceDrive right = drive(75, 90, SLOPE);

    @Test
    void curvePointsGiveBothTheSameAngle() {
        SurfaceMatch match = SurfaceMatching.match(left, right, Math.toRadians(20), Math.toRadians(18), 5);

        assertThat(match.curve()).hasSize(5).allSatisfy(point -> {
            assertThat(left.at(point.firstSeconds()).position().surfaceRadians())
                    .isCloseTo(point.surfaceRadians(), within(1e-9));
            assertThat(right.at(point.secondSeconds()).position().surfaceRadians())
                    .isCloseTo(point.surfaceRadians(), within(1e-9));
        });
        assertThat(match.curve().get(4).surfaceRadians()).isCloseTo(Math.toRadians(20), within(1e-9));
        assertThat(match.curve().get(0).surfaceRadians()).isCloseTo(Math.toRadians(-18), within(1e-9));
        assertThat(match.curve().get(2).secondSeconds()).isCloseTo(1500e-6, within(1e-12));
    }

    @Test
    void moreCurvePointsLeaveLessMismatch() {
        SurfaceMatch five = SurfaceMatching.match(left, right, Math.toRadians(20), Math.toRadians(20), 5);
        SurfaceMatch nine = SurfaceMatching.match(left, right, Math.toRadians(20), Math.toRadians(20), 9);

        double ends = Math.abs(SurfaceMatch.worst(five.byEnds()).radians());
        double byFive = Math.abs(SurfaceMatch.worst(five.byCurve()).radians());
        double byNine = Math.abs(SurfaceMatch.worst(nine.byCurve()).radians());
        assertThat(ends).isGreaterThan(Math.toRadians(0.2));
        // straight lines between points: the error of a smooth curve falls with the square of their distance
        assertThat(ends / byFive).isBetween(2.5, 5.5);
        assertThat(byFive / byNine).isBetween(2.5, 5.5);
    }

    @Test
    void mirroredSurfacesNeedMirroredPulsesOnly() {
        SurfaceDrive mirrored = drive(-90, -90, -SLOPE);

        SurfaceMatch match = SurfaceMatching.match(left, mirrored, Math.toRadians(20), Math.toRadians(20), 3);

        assertThat(match.byEnds())
                .allSatisfy(mismatch -> assertThat(mismatch.radians()).isCloseTo(0, within(1e-2)));
    }

    @Test
    void mismatchInMillimetresIsTheRulersDifference() {
        SurfaceMatch match = SurfaceMatching.match(left, right, Math.toRadians(20), Math.toRadians(20), 3);
        Mismatch worst = SurfaceMatch.worst(match.byEnds());

        assertThat(worst.edgeMetres())
                .isCloseTo(
                        0.1 * (Math.sin(worst.secondRadians() / 2) - Math.sin(worst.firstRadians() / 2)),
                        within(1e-12));
    }

    @Test
    void refusesThrowsOneSurfaceCannotReachAndOddCurves() {
        assertThatThrownBy(() -> SurfaceMatching.match(left, right, Math.toRadians(60), Math.toRadians(20), 5))
                .hasMessageContaining("cannot reach");
        assertThatThrownBy(() -> SurfaceMatching.match(left, right, 0.2, 0.2, 4))
                .hasMessageContaining("odd number");
    }

    private static SurfaceDrive drive(double arm, double horn, double slope) {
        return new SurfaceDrive(
                new FourBar(0.010, 0.015, 0.1, 0, Math.toRadians(arm), Math.toRadians(horn)),
                new PulseScale(1500e-6, slope),
                0.05);
    }
}
