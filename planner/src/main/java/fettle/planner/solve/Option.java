package fettle.planner.solve;

import java.util.List;

/**
 * One thing that can be done with a pack: a charge or a run. Several packs share one by its key.
 *
 * @param key the same for all packs that take part in one job or run with one set
 * @param run index of the run; −1 for a charge
 * @param way index of the way to charge; −1 for a run
 * @param from level it starts at
 * @param to level it leaves the pack at
 * @param minutes how long it takes
 * @param ticks steps it holds its resources or craft
 * @param freeTicks steps until the pack can be used again
 * @param uses what it takes of resources; none for a run
 * @param source index of the source it draws energy from; −1 for none that runs out or lies at the field
 * @param wattHours energy from that source
 * @param counts what it adds to each count, all packs together
 * @param share number of packs that take part
 * @param startable at which steps it may start
 */
record Option(
        Key key,
        int run,
        int way,
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
        boolean[] startable) {

    /**
     * What packs that take part in one thing agree on.
     *
     * @param kind what it is and of whom
     * @param fromFraction the charge a charge starts from, as all its packs see it; 0 for runs
     * @param locked whether it keeps a lock
     */
    record Key(String kind, double fromFraction, boolean locked) {}

    boolean isRun() {
        return run >= 0;
    }

    boolean isJoint() {
        return share > 1;
    }
}
