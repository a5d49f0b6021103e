package fettle.planner.solve;

/** What a pack's day is judged by while it is searched. */
interface Costs {
    /** Cost of starting an option at one of its steps; infinite where it cannot. */
    double start(int option, int tick);

    /** Cost of one minute at full. */
    double fullMinute();

    /** Cost of one unit of missed storage. */
    double storageUnit();

    /** Whether a run may be met only once in a day; without it the cost found is a bound on all days. */
    boolean runsOnce();
}
