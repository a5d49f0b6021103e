package fettle.planner.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every day a pack could have by itself, where there are not too many. */
final class AllDays {
    private final Course course;
    private final int ticks;
    private final int most;
    private final List<Day> days = new ArrayList<>();

    private AllDays(Course course, int ticks, int most) {
        this.course = course;
        this.ticks = ticks;
        this.most = most;
    }

    /** All days; nothing where there are more than some number. */
    static Optional<List<Day>> of(Course course, int ticks, int most) {
        AllDays all = new AllDays(course, ticks, most);
        all.follow(0, course.freeTick(), List.of());
        return all.days.size() > most ? Optional.empty() : Optional.of(all.days);
    }

    private void follow(int level, int from, List<Item> items) {
        days.add(new Day(course, items));
        for (int tick = from; tick < ticks; tick++) {
            for (int index : course.at()[level][tick]) {
                Option option = course.options().get(index);
                if (days.size() <= most && isNew(option, items)) {
                    List<Item> longer = new ArrayList<>(items);
                    longer.add(Item.unplaced(option, tick));
                    follow(option.to(), tick + option.freeTicks(), longer);
                }
            }
        }
    }

    private static boolean isNew(Option option, List<Item> items) {
        return !option.isRun() || items.stream().noneMatch(item -> item.option().run() == option.run());
    }
}
