package fettle.engine.pack;

/**
 * How well the keeper's meter reads.
 *
 * @param cellVolts one standard deviation of a cell reading [V], &gt; 0
 */
public record MeterAccuracy(double cellVolts) {
    /** A hand-held cell meter: ± 5 mV. Common practice, no source. */
    public static final MeterAccuracy USUAL = new MeterAccuracy(0.005);
}
