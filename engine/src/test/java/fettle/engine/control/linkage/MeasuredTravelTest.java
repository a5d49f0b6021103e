package fettle.engine.control.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.control.linkage.MeasuredTravel.Reading;
import fettle.engine.control.matching.Mismatch;
import fettle.engine.control.matching.SurfaceMatch;
import fettle.engine.control.matching.SurfaceMatching;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

class MeasuredTravelTest {
    private static final double CHORD = 0.05;

    private final SurfaceDrive drive = new SurfaceDrive(
            new FourBar(0.010, 0.015, 0.1, 0, Math.toRadians(90), Math.toRadians(80)),
            new PulseScale(1500e-6, TradeUnit.DEGREE.toSi(0.1) / 1e-6),
            CHORD);

    /** Against a general-purpose linear interpolation (Hipparchus 4.0.3), 1e-12 rad. */
    @Test
    void readsBetweenReadingsAsALibraryDoes() {
        MeasuredTravel travel = measured(100);
        PolynomialSplineFunction lines = new LinearInterpolator()
                .interpolate(
                        travel.rising().stream()
                                .mapToDouble(Reading::pulseSeconds)
                                .toArray(),
                        travel.rising().stream()
                                .mapToDouble(Reading::surfaceRadians)
                                .toArray());

        for (int micros = 1100; micros <= 1900; micros += 7) {
            double pulse = micros * 1e-6;
            assertThat(travel.surfaceRadians(pulse)).isCloseTo(lines.value(pulse), within(1e-12));
            assertThat(travel.pulseSeconds(travel.surfaceRadians(pulse))).isCloseTo(pulse, within(1e-12));
        }
    }

    /** The class says a quarter of a degree for readings every 100 µs. */
    @Test
    void readingsEveryHundredMicrosecondsStayNearTheLinkage() {
        MeasuredTravel travel = measured(100);

        for (int micros = 1100; micros <= 1900; micros++) {
            assertThat(travel.surfaceRadians(micros * 1e-6))
                    .isCloseTo(drive.surfaceRadians(micros * 1e-6), within(Math.toRadians(0.25)));
        }
    }

    @Test
    void matchesAMeasuredSurfaceToAWorkedOutOne() {
        SurfaceMatch match = SurfaceMatching.match(drive, measured(50), Math.toRadians(18), Math.toRadians(18), 9);

        Mismatch worst = SurfaceMatch.worst(match.byCurve());
        assertThat(Math.abs(worst.radians())).isLessThan(Math.toRadians(0.1));
        assertThat(match.curve())
                .allSatisfy(point -> assertThat(point.secondSeconds()).isCloseTo(point.firstSeconds(), within(2e-6)));
    }

    @Test
    void refusesReadingsThatTurnRepeatOrEnd() {
        assertThatThrownBy(() -> travel(1100, -20, 1500, 0)).hasMessageContaining("2 readings");
        assertThatThrownBy(() -> travel(1100, -20, 1500, 0, 1900, -5))
                .hasMessageContaining("does not go one way")
                .hasMessageContaining("1500 µs (0.0°) to 1900 µs (-5.0°)");
        assertThatThrownBy(() -> travel(1100, -20, 1100, 0, 1900, 20)).hasMessageContaining("each pulse once");
        assertThatThrownBy(() -> travel(400, -20, 1500, 0, 1900, 20)).hasMessageContaining("400 µs");
        MeasuredTravel travel = travel(1100, -20, 1500, 0, 1900, 20);
        assertThatThrownBy(() -> travel.surfaceRadians(2000e-6)).hasMessageContaining("outside the readings");
        assertThatThrownBy(() -> travel.pulseSeconds(Math.toRadians(25)))
                .hasMessageContaining("25.0° lies outside the readings");
    }

    private MeasuredTravel measured(int everyMicros) {
        return new MeasuredTravel(
                IntStream.iterate(1100, micros -> micros <= 1900, micros -> micros + everyMicros)
                        .mapToObj(micros -> new Reading(micros * 1e-6, drive.surfaceRadians(micros * 1e-6)))
                        .toList(),
                CHORD);
    }

    private static MeasuredTravel travel(double... pairs) {
        List<Reading> readings = IntStream.range(0, pairs.length / 2)
                .mapToObj(at -> new Reading(pairs[2 * at] * 1e-6, Math.toRadians(pairs[2 * at + 1])))
                .toList();
        return new MeasuredTravel(readings, CHORD);
    }
}
