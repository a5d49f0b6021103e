package fettle.engine.control.linkage;

/**
 * Where the ends of the rod are, from the servo shaft.
 *
 * @param armXMetres hole of the servo arm, aft [m]
 * @param armYMetres the same, up [m]
 * @param hornXMetres hole of the horn, aft [m]
 * @param hornYMetres the same, up [m]
 */
public record RodEnds(double armXMetres, double armYMetres, double hornXMetres, double hornYMetres) {
    /** Length between them [m]. */
    public double rodMetres() {
        return Math.hypot(hornXMetres - armXMetres, hornYMetres - armYMetres);
    }
}
