package fettle.engine.pack.simulation;

/**
 * Charge and energy that passed the common terminals, and what was lost on the way.
 *
 * @param outCoulombs charge drawn [C]
 * @param inCoulombs charge put in [C]
 * @param outJoules energy drawn at the terminals [J]
 * @param inJoules energy put in at the terminals [J]
 * @param cellHeatJoules heat made in the cells: current times (rest volts − terminal volts), and charge lost [J]
 * @param leadHeatJoules heat in leads and connectors [J]
 * @param bleedHeatJoules energy drawn by bleed resistors and balancer [J]
 */
public record Passed(
        double outCoulombs,
        double inCoulombs,
        double outJoules,
        double inJoules,
        double cellHeatJoules,
        double leadHeatJoules,
        double bleedHeatJoules) {
    /** All energy that became heat [J]. */
    public double lostJoules() {
        return cellHeatJoules + leadHeatJoules + bleedHeatJoules;
    }

    /** What passed since an earlier reading. */
    Passed since(Passed earlier) {
        return new Passed(
                outCoulombs - earlier.outCoulombs,
                inCoulombs - earlier.inCoulombs,
                outJoules - earlier.outJoules,
                inJoules - earlier.inJoules,
                cellHeatJoules - earlier.cellHeatJoules,
                leadHeatJoules - earlier.leadHeatJoules,
                bleedHeatJoules - earlier.bleedHeatJoules);
    }
}
