package fettle.engine.pack.simulation;

/**
 * A balancer that draws charge from the cells above the lowest one.
 *
 * @param bleedAmps current it draws from a cell [A], > 0
 * @param duty share of the time it can bleed (the rest it measures), 0 < duty ≤ 1
 * @param withinVolts a cell this little above the lowest of its pack is left alone [V], ≥ 0
 */
public record Balancer(double bleedAmps, double duty, double withinVolts) {
    /** Mean current drawn from a cell that is bled [A]. */
    double meanAmps() {
        return bleedAmps * duty;
    }
}
