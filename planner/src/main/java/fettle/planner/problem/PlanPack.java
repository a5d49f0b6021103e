package fettle.planner.problem;

import fettle.engine.pack.Standing;

/**
 * A pack as it is at the start.
 *
 * @param tag its tag
 * @param standing its standing; a grounded or retired pack is never planned
 * @param chargeFraction its charge now
 * @param levels the charges that matter for it
 * @param times the waits it needs
 * @param fullWeight what a minute at full costs, in whole units; 0 if nothing
 */
public record PlanPack(
        String tag, Standing standing, double chargeFraction, Levels levels, Times times, int fullWeight) {
    private static final double ROUNDING = 1e-9;

    /**
     * Charges that matter for a pack.
     *
     * @param reserveFraction never used below this
     * @param storageLow lower end of the storage band
     * @param storageTarget charge a storage job ends at, inside the band
     * @param storageHigh upper end of the storage band
     * @param fullFraction charge a charge to full ends at
     */
    public record Levels(
            double reserveFraction, double storageLow, double storageTarget, double storageHigh, double fullFraction) {
        /** Reserve 20 %, storage 40 to 60 %, full 100 %: common practice, no source. */
        public static final Levels USUAL = new Levels(0.2, 0.4, 0.5, 0.6, 1.0);
    }

    /**
     * Waits of a pack [min].
     *
     * @param freeAtMinute from when it is cool and free
     * @param restMinutes wait between the end of a charge and the next use
     * @param coolMinutes wait between the end of a run and the next charge
     * @param storageByMinute when it must be within its storage band again
     */
    public record Times(int freeAtMinute, int restMinutes, int coolMinutes, int storageByMinute) {}

    /** Whether its standing forbids any use. */
    public boolean barred() {
        return standing == Standing.GROUNDED || standing == Standing.RETIRED;
    }

    /** Whether a charge lies in its storage band. */
    public boolean stored(double fraction) {
        return fraction >= levels.storageLow - ROUNDING && fraction <= levels.storageHigh + ROUNDING;
    }
}
