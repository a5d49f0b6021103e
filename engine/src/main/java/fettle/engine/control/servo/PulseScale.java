package fettle.engine.control.servo;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;

/**
 * How a servo turns pulses into angles: a straight line through its centre.
 *
 * <p>Formula: angle = (pulse − centre) · slope. Holds between the servo's own stops; the servo's dead band and the
 * curvature of its track are left out.
 *
 * @param centreSeconds pulse at angle 0 [s], 500 … 2500 µs
 * @param radiansPerPulseSecond slope [rad/s of pulse], negative for a reversed servo; 0.02 … 0.5 °/µs
 */
public record PulseScale(double centreSeconds, double radiansPerPulseSecond) {
    public static final double SHORTEST_SECONDS = 500e-6;
    public static final double LONGEST_SECONDS = 2500e-6;

    private static final double FLATTEST = TradeUnit.DEGREE.toSi(0.02) / 1e-6;
    private static final double STEEPEST = TradeUnit.DEGREE.toSi(0.5) / 1e-6;

    public PulseScale {
        checkPulse(new Faults(), "centre", "centre pulse", centreSeconds).refuse();
        double steepness = Math.abs(radiansPerPulseSecond);
        if (!(steepness >= FLATTEST && steepness <= STEEPEST)) {
            throw new InputException(
                    "slope",
                    "a servo turns 0.02 to 0.5 degrees per µs, usually about 0.1. Measure the angle between two pulses"
                            + " and divide.");
        }
    }

    /** Adds a fault if a pulse is outside 500 … 2500 µs, the widest any servo is known to answer. */
    public static Faults checkPulse(Faults faults, String field, String what, double pulseSeconds) {
        return faults.range(
                field,
                what,
                pulseSeconds,
                TradeUnit.MICROSECOND,
                TradeUnit.MICROSECOND.fromSi(SHORTEST_SECONDS),
                TradeUnit.MICROSECOND.fromSi(LONGEST_SECONDS),
                "Pulses are in microseconds; check the unit and the columns.");
    }

    /** Servo angle [rad] at a pulse [s]. */
    public double servoRadians(double pulseSeconds) {
        return (pulseSeconds - centreSeconds) * radiansPerPulseSecond;
    }

    /** Pulse [s] for a servo angle [rad]; may lie outside what the servo takes. */
    public double pulseSeconds(double servoRadians) {
        return centreSeconds + servoRadians / radiansPerPulseSecond;
    }
}
