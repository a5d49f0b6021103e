package fettle.engine.control.swashplate;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;

/**
 * One servo under the plate; its arm is level at angle 0 and lifts its ball with positive angles.
 *
 * @param name as the sheet calls it, e.g. {@code left}
 * @param azimuthRadians where its ball sits [rad], from the nose, clockwise
 * @param ballRadiusMetres ball from the mast [m], 5 … 200 mm
 * @param armMetres servo arm [m], 5 … 60 mm
 * @param scale pulses to angles
 */
public record PlateServo(
        String name, double azimuthRadians, double ballRadiusMetres, double armMetres, PulseScale scale) {
    /** Arm angle past which it lifts little and the link may fold [rad]; common practice, no source. */
    public static final double FLATTEST = TradeUnit.DEGREE.toSi(60);

    public PlateServo {
        new Faults()
                .range("ball", "ball from the mast", ballRadiusMetres, TradeUnit.MILLIMETRE, 5, 200, "Measure it.")
                .range("arm", "servo arm", armMetres, TradeUnit.MILLIMETRE, 5, 60, "Measure shaft to hole.")
                .refuse();
    }

    /** Height of the ball on a plate [m]: h − r·(cos ψ · slope forward + sin ψ · slope right). */
    double ballMetres(PlateAttitude plate) {
        double[] slopes = plate.slopes();
        double[] shares = shares();
        return shares[0] * slopes[0] + shares[1] * slopes[1] + shares[2] * slopes[2];
    }

    /** What height, forward and right slope add to the ball's height. */
    double[] shares() {
        return new double[] {
            1, -ballRadiusMetres * Math.cos(azimuthRadians), -ballRadiusMetres * Math.sin(azimuthRadians)
        };
    }

    /**
     * Pulse that lifts the ball to a height [m]: arm · sin θ.
     *
     * @throws InputException past 60° of the arm or outside 500 … 2500 µs
     */
    double pulseSeconds(double ballMetres) {
        double sine = ballMetres / armMetres;
        if (!(Math.abs(sine) <= Math.sin(FLATTEST))) {
            throw new InputException(
                    "plate",
                    "servo " + name + " would have to move its ball by " + TradeUnit.MILLIMETRE.print(ballMetres, 1)
                            + "; its arm of " + TradeUnit.MILLIMETRE.print(armMetres, 1) + " gives "
                            + TradeUnit.MILLIMETRE.print(armMetres * Math.sin(FLATTEST), 1)
                            + " at 60°. Take less collective or cyclic, or a longer arm.");
        }
        double pulse = scale.pulseSeconds(Math.asin(sine));
        PulseScale.checkPulse(new Faults(), "plate", "pulse of servo " + name, pulse)
                .refuse();
        return pulse;
    }

    /** Height of the ball at a pulse [m]. */
    double ballMetres(double pulseSeconds) {
        return armMetres * Math.sin(scale.servoRadians(pulseSeconds));
    }

    /** Pulse a mix in proportion sends: the slope at the middle carried on. */
    double mixedSeconds(double ballMetres) {
        return scale.pulseSeconds(ballMetres / armMetres);
    }
}
