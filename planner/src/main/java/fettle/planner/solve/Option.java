package fettle.planner.solve;

import java.util.List;

/**
 * One thing that can be done with a pack: a charge or a run. Several packs share one by its key.
 *
 * @param key the same for all packs that take part in one job or run with one set
 * @param run index of the run; −1 for a charge
 * @param places ports it can be done on alike, each with its way to charge; empty for a run
 * @param from level it starts at
 * @param to level it leaves the pack at
 * @param minutes how long it takes
 * @param ticks steps it holds its resources or craft
 * @param freeTicks steps until the pack can be used again
 * @param uses what it takes of resources besides its port; none for a run
 * @param source index of the source it draws energy from; −1 for none that runs out or lies at the field
 * @param wattHours energy from that source
 * @param counts what it adds to each count, all packs together
 * @param share number of packs that take part
 * @param starts steps it may start at, in order
 */
record Option(
        Key key,
        int run,
        List<Place> places,
        int from,
        int to,
        int minutes,
        int ticks,
        int freeTicks,
        List<Use> uses,
        int source,
        int wattHours,
        long[] counts,
        int share,
        int[] starts) {

    /**
     * What packs that take part in one thing agree on.
     *
     * @param kind what it is and of whom
     * @param fromFraction the charge a charge starts from, as all its packs see it; 0 for runs
     * @param locked whether it keeps a lock
     */
    record Key(String kind, double fromFraction, boolean locked) {}

    /**
     * A port and the way to charge on it.
     *
     * @param port index of the port's resource
     * @param way index of the way
     */
    record Place(int port, int way) {}

    /** The same on some of its ports only. */
    Option on(List<Place> others) {
        return new Option(
                key, run, others, from, to, minutes, ticks, freeTicks, uses, source, wattHours, counts, share, starts);
    }

    boolean isRun() {
        return run >= 0;
    }

    boolean isJoint() {
        return share > 1;
    }
}
