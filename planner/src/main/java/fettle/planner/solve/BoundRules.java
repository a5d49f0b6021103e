package fettle.planner.solve;

/** What a budget forbids outright, so that no price is needed. */
final class BoundRules {
    /** Outweighs any count. */
    static final double FORBIDDEN = 1e12;

    private BoundRules() {}

    /** Whether an option alone would pass a budget. */
    static boolean forbids(BoundTask task, Option option) {
        for (int count : new int[] {Count.STRESS, Count.ENERGY}) {
            if (!task.isFree(count) && option.counts()[count] > task.budgets()[count]) {
                return true;
            }
        }
        return false;
    }

    /** Last step an option may start at, so that it ends by the finish that is allowed. */
    static int lastStart(BoundTask task, Option option, Model model) {
        int last = model.ticks() - 1;
        if (task.isFree(Count.FINISH)) {
            return last;
        }
        long room = task.budgets()[Count.FINISH] - option.minutes();
        return room < 0 ? -1 : (int) Math.min(last, room / model.stepMinutes());
    }
}
