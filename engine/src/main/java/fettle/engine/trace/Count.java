package fettle.engine.trace;

/**
 * Charge and energy counted over a stretch. Energy is 0 where no volts were logged.
 *
 * @param outCoulombs charge taken out [C], ≥ 0
 * @param inCoulombs charge put in [C], ≥ 0
 * @param outJoules energy taken out at the terminals [J], ≥ 0
 * @param inJoules energy put in at the terminals [J], ≥ 0
 * @param countedSeconds time counted [s]
 * @param unseenSeconds time in gaps, during which nothing was counted [s]
 */
public record Count(
        double outCoulombs,
        double inCoulombs,
        double outJoules,
        double inJoules,
        double countedSeconds,
        double unseenSeconds) {
    public static final Count NOTHING = new Count(0, 0, 0, 0, 0, 0);

    /** Charge taken out less charge put in [C]. */
    public double netCoulombs() {
        return outCoulombs - inCoulombs;
    }

    /** Energy taken out less energy put in [J]. */
    public double netJoules() {
        return outJoules - inJoules;
    }

    public Count plus(Count other) {
        return new Count(
                outCoulombs + other.outCoulombs,
                inCoulombs + other.inCoulombs,
                outJoules + other.outJoules,
                inJoules + other.inJoules,
                countedSeconds + other.countedSeconds,
                unseenSeconds + other.unseenSeconds);
    }
}
