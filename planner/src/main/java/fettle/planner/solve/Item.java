package fettle.planner.solve;

/**
 * One thing a pack does.
 *
 * @param option what
 * @param tick the step it starts at
 */
record Item(Option option, int tick) {
    /** What all packs that take part share. */
    record Shared(Option.Key key, int tick) {}

    Shared shared() {
        return new Shared(option.key(), tick);
    }

    int endMinute(int stepMinutes) {
        return tick * stepMinutes + option.minutes();
    }
}
