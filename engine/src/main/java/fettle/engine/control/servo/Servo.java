package fettle.engine.control.servo;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * A servo as its sheet and the bench describe it.
 *
 * @param name its name on the bench
 * @param scale pulses to angles, with its own centre: about 1500 or 1520 µs, 760 µs for narrow-pulse tail servos
 * @param halfSpanSeconds pulse from centre to its own stop [s], 50 … 1000 µs
 * @param fastestFrameHertz fastest frame rate it takes [Hz], 40 … 1000: analogue about 65, digital 200 to 333,
 *     narrow-pulse 560 (common practice, no source)
 * @param deadBandSeconds change of pulse it ignores [s], 0 … 50 µs
 * @param ratings its data by voltage
 */
public record Servo(
        String name,
        PulseScale scale,
        double halfSpanSeconds,
        double fastestFrameHertz,
        double deadBandSeconds,
        Ratings ratings) {
    public Servo {
        String mend = "See the servo's sheet or measure it.";
        Faults faults = new Faults();
        if (name.isBlank()) {
            faults.add("name", "the servo has no name. Give it the name you use on the bench.");
        }
        faults.range("halfSpan", "pulse span each side", halfSpanSeconds, TradeUnit.MICROSECOND, 50, 1000, mend);
        faults.range("fastestFrame", "fastest frame rate", fastestFrameHertz, TradeUnit.HERTZ, 40, 1000, mend);
        faults.range("deadBand", "dead band", deadBandSeconds, TradeUnit.MICROSECOND, 0, 50, mend);
        faults.refuse();
    }

    /** Lowest pulse it follows [s]. */
    public double lowestSeconds() {
        return scale.centreSeconds() - halfSpanSeconds;
    }

    /** Highest pulse it follows [s]. */
    public double highestSeconds() {
        return scale.centreSeconds() + halfSpanSeconds;
    }
}
