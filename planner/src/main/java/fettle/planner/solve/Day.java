package fettle.planner.solve;

import java.util.List;

/**
 * What one pack does, in order.
 *
 * @param course the pack
 * @param items what it does
 */
record Day(Course course, List<Item> items) {
    Day {
        items = List.copyOf(items);
    }

    /** Weighted minutes at full, from the start to the horizon. */
    long fullMinutes(int stepMinutes, int horizonMinutes) {
        long minutes = 0;
        int level = 0;
        int since = 0;
        for (Item item : items) {
            if (course.levels().get(level).full()) {
                minutes += item.tick() * stepMinutes - since;
            }
            level = item.option().to();
            since = item.endMinute(stepMinutes);
        }
        if (course.levels().get(level).full()) {
            minutes += horizonMinutes - since;
        }
        return minutes * course.pack().fullWeight();
    }

    /** 0 if in its storage band in time, 1 if late, 2 if not at all. */
    int storage(int stepMinutes) {
        if (items.isEmpty()) {
            return course.levels().get(0).stored() ? 0 : 2;
        }
        Item last = items.get(items.size() - 1);
        if (!course.levels().get(last.option().to()).stored()) {
            return 2;
        }
        return last.endMinute(stepMinutes) > course.pack().times().storageByMinute() ? 1 : 0;
    }
}
