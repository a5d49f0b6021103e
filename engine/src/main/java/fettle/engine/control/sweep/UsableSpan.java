package fettle.engine.control.sweep;

/**
 * Pulses a surface may be driven between.
 *
 * @param lowestSeconds suggested lower end point [s]
 * @param highestSeconds suggested upper end point [s]
 * @param lowMarginSeconds how far it stays from where binding begins below [s]; 0 if nothing bound there
 * @param highMarginSeconds the same above [s]
 */
public record UsableSpan(
        double lowestSeconds, double highestSeconds, double lowMarginSeconds, double highMarginSeconds) {
    /** Suggested centre [s]: as much travel on either side. */
    public double centreSeconds() {
        return (lowestSeconds + highestSeconds) / 2;
    }
}
