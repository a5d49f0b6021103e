package fettle.planner.solve;

/**
 * Leaves some choices out for one step of improving, so that days come up which their pack alone would not choose. Immutable.
 *
 * @param seed which choices
 * @param share share of options left out, and share that start no sooner than some moment, 0 to 1
 */
record Shake(long seed, double share) {
    /** Leaves nothing out. */
    static final Shake NONE = new Shake(0, 0);

    boolean leavesOut(Course course, int option, int tick) {
        if (share <= 0) {
            return false;
        }
        long key = seed + 1_000_003L * course.index() + 31L * option;
        if (uniform(key) < share) {
            return true;
        }
        return uniform(key + 7) < share && tick < sooner(course.options().get(option), key);
    }

    private static int sooner(Option option, long key) {
        int[] starts = option.starts();
        return starts[(int) (uniform(key + 13) * starts.length)];
    }

    /** Evenly spread over 0 to 1. SplitMix64's mixing: G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014, pp. 453-472. */
    private static double uniform(long key) {
        long z = key * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return ((z ^ (z >>> 31)) >>> 11) * 0x1.0p-53;
    }
}
