package fettle.engine.control.servo;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * What a receiver channel sends.
 *
 * @param lowestSeconds shortest pulse [s], 500 … 2500 µs
 * @param centreSeconds pulse with the stick centred [s]
 * @param highestSeconds longest pulse [s]
 * @param frameHertz pulses per second [Hz], 20 … 1000
 */
public record Signal(double lowestSeconds, double centreSeconds, double highestSeconds, double frameHertz) {
    public Signal {
        Faults faults = new Faults();
        PulseScale.checkPulse(faults, "lowest", "shortest pulse", lowestSeconds);
        PulseScale.checkPulse(faults, "centre", "centre pulse", centreSeconds);
        PulseScale.checkPulse(faults, "highest", "longest pulse", highestSeconds);
        faults.range("frame", "frame rate", frameHertz, TradeUnit.HERTZ, 20, 1000, "Usual are 50 to 560 Hz.");
        if (!(lowestSeconds <= centreSeconds && centreSeconds <= highestSeconds)) {
            faults.add("centre", "the centre pulse must lie between the shortest and the longest.");
        }
        faults.refuse();
    }

    /** A signal as wide on either side of its centre. */
    public static Signal around(double centreSeconds, double halfSpanSeconds, double frameHertz) {
        return new Signal(centreSeconds - halfSpanSeconds, centreSeconds, centreSeconds + halfSpanSeconds, frameHertz);
    }

    /** Time from one pulse to the next [s]. */
    public double frameSeconds() {
        return 1 / frameHertz;
    }

    /** Time between the end of the longest pulse and the next one [s]; negative if it does not fit into the frame. */
    public double lowSeconds() {
        return frameSeconds() - highestSeconds;
    }
}
