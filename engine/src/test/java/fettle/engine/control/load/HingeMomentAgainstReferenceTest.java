package fettle.engine.control.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hinge moments and air against the reference folder's standards/hinge_*.csv and isa.csv. */
class HingeMomentAgainstReferenceTest {
    /** Numerical inversion of the thin-aerofoil integral equation, printed to six decimals. */
    @Test
    void thinAerofoilCoefficientsMatchTheIndependentNumericalSolution() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/hinge_thin_aerofoil.csv")) {
            double ratio = number(row[0]);
            assertThat(ThinAerofoil.momentPerAttack(ratio)).isCloseTo(number(row[1]), within(1.5e-6));
            assertThat(ThinAerofoil.momentPerDeflection(ratio)).isCloseTo(number(row[3]), within(1.5e-6));
            rows++;
        }
        assertThat(rows).isEqualTo(9);
    }

    /** ISO 2533:1975 tables 5 and 6, printed to six figures. */
    @Test
    void airIsAsDenseAsTheStandardSays() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/isa.csv")) {
            assertThat(StandardAir.density(number(row[0]), null))
                    .as(row[0] + " m")
                    .isCloseTo(number(row[3]), within(5e-6 * number(row[3]) + 5e-7));
            rows++;
        }
        assertThat(rows).isEqualTo(17);
        assertThat(StandardAir.density(0, TradeUnit.CELSIUS.toSi(35))).isCloseTo(1.225 * 288.15 / 308.15, within(1e-6));
    }

    /** Computed cases with given coefficients; tolerance half the last digit printed. */
    @Test
    void momentAndServoTorqueFollowFromTheCoefficient() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/hinge_torque_cases.csv")) {
            double speed = number(row[1]);
            double pascals = StandardAir.density(number(row[2]), null) * speed * speed / 2;
            double moment = AirLoad.newtonMetres(number(row[7]), pascals, number(row[5]), number(row[6]));
            assertThat(moment).as(row[0]).isCloseTo(number(row[8]), within(1e-6));
            double torque = moment * number(row[9]);
            assertThat(torque).as(row[0]).isCloseTo(number(row[10]), within(1.5e-6));
            assertThat(TradeUnit.KILOGRAM_FORCE_CENTIMETRE.fromSi(torque))
                    .as(row[0])
                    .isCloseTo(number(row[11]), within(1.5e-5));
            assertThat(TradeUnit.OUNCE_FORCE_INCH.fromSi(torque)).as(row[0]).isCloseTo(number(row[12]), within(1.5e-4));
            rows++;
        }
        assertThat(rows).isEqualTo(15);
    }

    /** Every converged tripped panel-code point with angle of attack and flap the same way. */
    @Test
    void designMomentIsAboveEveryTrippedViscousValueAndTheExpectedOneAmongThem() {
        int rows = 0;
        int within = 0;
        double largest = 0;
        double smallest = 1;
        for (String[] row : ReferenceFiles.rows("standards/hinge_xfoil_viscous.csv")) {
            if (!row[3].startsWith("tripped") || number(row[5]) < 5) {
                continue;
            }
            AirLoad load = new AirLoad(
                    0.05, 0.6, number(row[1]), new Estimate(30, 0, List.of()), 1.225, Math.toRadians(number(row[4])));
            double flap = Math.toRadians(number(row[5]));
            double viscous = AirLoad.newtonMetres(Math.abs(number(row[7])), load.dynamicPascals(), 0.05, 0.6);
            double share = viscous / load.designNewtonMetres(flap);
            largest = Math.max(largest, share);
            smallest = Math.min(smallest, share);
            Estimate expected = load.expectedNewtonMetres(flap);
            within += Math.abs(viscous - expected.value()) <= 2 * expected.standardDeviation() ? 1 : 0;
            rows++;
        }
        assertThat(rows).isEqualTo(93);
        assertThat(largest).isLessThan(0.78);
        assertThat(smallest).isGreaterThan(0.42);
        assertThat(within).isGreaterThan((int) (0.95 * rows));
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }
}
