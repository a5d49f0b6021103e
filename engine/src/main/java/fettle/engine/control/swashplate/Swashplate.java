package fettle.engine.control.swashplate;

import fettle.engine.control.Caution;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/**
 * A plate on three servos.
 *
 * <p>Formula: ball height = h − r·(cos ψ·tan forward + sin ψ·tan right) = arm · sin θ; three balls make three equations
 * in three unknowns.
 *
 * @param servos the three servos, not in one line
 */
public record Swashplate(List<PlateServo> servos) {
    private static final double STRAIGHT = 1e-6; // of determinant over the square of the radius

    public Swashplate {
        servos = List.copyOf(servos);
        if (servos.size() != 3) {
            throw new InputException("servos", "the plate has " + servos.size() + " servos; expected three of them.");
        }
        double radius = servos.get(0).ballRadiusMetres();
        if (Math.abs(new LUDecomposition(matrix(servos)).getDeterminant()) < STRAIGHT * radius * radius) {
            throw new InputException("servos", "the three balls are in one line. Give their azimuths from the nose.");
        }
    }

    /**
     * Two servos at the front and one at the tail.
     *
     * @param betweenTailAndSide 120°, 135° or 140°, from the tail servo to either other one [rad]
     * @param ballRadiusMetres all balls from the mast [m]
     * @param armMetres all arms [m]
     * @param scale of all servos; the right one is often reversed: give its own with {@link PlateServo}
     */
    public static Swashplate withTailServo(
            double betweenTailAndSide, double ballRadiusMetres, double armMetres, PulseScale scale) {
        if (!(betweenTailAndSide > Math.PI / 2 && betweenTailAndSide < Math.PI)) {
            throw new InputException(
                    "layout", "the angle from the tail servo to the others is usually 120°, 135° or 140°.");
        }
        double side = Math.PI - betweenTailAndSide;
        return new Swashplate(List.of(
                new PlateServo("tail", Math.PI, ballRadiusMetres, armMetres, scale),
                new PlateServo("left", -side, ballRadiusMetres, armMetres, scale),
                new PlateServo("right", side, ballRadiusMetres, armMetres, scale)));
    }

    /**
     * Pulses that put the plate somewhere, in the order of the servos [s].
     *
     * @throws InputException where an arm or a pulse runs out, naming the servo
     */
    public List<Double> pulses(PlateAttitude plate) {
        return servos.stream()
                .map(servo -> servo.pulseSeconds(servo.ballMetres(plate)))
                .toList();
    }

    /** Where the plate stands at three pulses [s]. */
    public PlateAttitude attitude(List<Double> pulseSeconds) {
        double[] heights = new double[servos.size()];
        for (int at = 0; at < heights.length; at++) {
            heights[at] = servos.get(at).ballMetres(pulseSeconds.get(at));
        }
        return PlateAttitude.ofSlopes(new LUDecomposition(matrix(servos))
                .getSolver()
                .solve(new ArrayRealVector(heights))
                .toArray());
    }

    /**
     * What a transmitter's mix in proportion makes of a wanted attitude: the attitude it reaches. The difference to the
     * wanted one is the interaction: collective that tilts, cyclic that lifts.
     */
    public PlateAttitude mixed(PlateAttitude wanted) {
        pulses(wanted); // refuses what arms and pulses cannot reach
        return attitude(mixedPulses(wanted));
    }

    /** The sheet for levelling the plate at several heights [m]. */
    public LevellingSheet levelling(List<Double> heightsMetres) {
        List<LevellingSheet.Row> rows = new ArrayList<>();
        for (double height : heightsMetres) {
            PlateAttitude level = new PlateAttitude(height, 0, 0);
            List<Double> exact = pulses(level);
            List<Double> mix = mixedPulses(level);
            List<Double> trims = new ArrayList<>();
            for (int at = 0; at < exact.size(); at++) {
                trims.add(exact.get(at) - mix.get(at));
            }
            rows.add(new LevellingSheet.Row(height, exact, trims, attitude(mix)));
        }
        return new LevellingSheet(servos.stream().map(PlateServo::name).toList(), rows, Caution.moving());
    }

    private List<Double> mixedPulses(PlateAttitude wanted) {
        return servos.stream()
                .map(servo -> servo.mixedSeconds(servo.ballMetres(wanted)))
                .toList();
    }

    private static Array2DRowRealMatrix matrix(List<PlateServo> servos) {
        return new Array2DRowRealMatrix(servos.stream().map(PlateServo::shares).toArray(double[][]::new));
    }
}
