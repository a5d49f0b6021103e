package fettle.engine.control.sweep;

import fettle.engine.units.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * What the measured angles say.
 *
 * @param radiansPerPulseSecond slope of angle over pulse in the free travel [rad/s]
 * @param hysteresisRadians angle rising less angle falling at the same pulse, without sign [rad]; {@code null} if only one
 *     direction was swept
 * @param deadBandSeconds change of pulse that hysteresis swallows on a reversal: the servo's dead band and the play of its
 *     gears together [s]; {@code null} if only one direction was swept
 */
public record AngleTrack(
        Estimate radiansPerPulseSecond,
        @Nullable Estimate hysteresisRadians,
        @Nullable Estimate deadBandSeconds) {}
