package fettle.planner.problem;

/** What a plan is judged by. Every goal is counted so that less is better; safety is no goal but a constraint. */
public enum Goal {
    /** Value of the runs wanted that are not made. Counted one by one. */
    MOST_VALUABLE_RUNS("the most valuable runs", "value of runs left out", 1),

    /** For every pack: 1 if it is in its storage band only after its time, 2 if it is not at the end. */
    STORAGE_IN_TIME("every pack to storage in time", "packs late (1) or not at all (2) at storage", 1),

    /** Minutes every pack is nearer to full than to its storage band while neither charged nor used, times its weight. */
    FEWEST_HOURS_AT_FULL("the fewest hours at full", "weighted pack-minutes at full", 60),

    /** Sum of the stress of all charges. */
    LEAST_STRESS("the gentlest charges", "stress of all charges", 1),

    /** Energy drawn from sources at the field [Wh], each charge rounded up. */
    LEAST_FIELD_ENERGY("the least energy at the field", "Wh from sources at the field", 10),

    /** End of the last charge or run [min]. */
    EARLIEST_FINISH("the earliest finish", "minute at which all is done", 15);

    private final String label;
    private final String meaning;
    private final int usualResolution;

    Goal(String label, String meaning, int usualResolution) {
        this.label = label;
        this.meaning = meaning;
        this.usualResolution = usualResolution;
    }

    /** The goal in words. */
    public String label() {
        return label;
    }

    /** What is counted, in words. */
    public String meaning() {
        return meaning;
    }

    /** Differences below this are not told apart. */
    public int usualResolution() {
        return usualResolution;
    }
}
