package fettle.planner.solve;

/**
 * One thing a pack does.
 *
 * @param option what
 * @param tick the step it starts at
 * @param place which of its ports it is done on; of no account for a run
 */
record Item(Option option, int tick, int place) {
    /** What all packs that take part share. */
    record Shared(Option.Key key, int tick) {}

    /** Something that is not on a port yet. */
    static Item unplaced(Option option, int tick) {
        return new Item(option, tick, 0);
    }

    Item on(int other) {
        return new Item(option, tick, other);
    }

    /** Its port and way; only of a charge. */
    Option.Place port() {
        return option.places().get(place);
    }

    Shared shared() {
        return new Shared(option.key(), tick);
    }

    int endMinute(int stepMinutes) {
        return tick * stepMinutes + option.minutes();
    }
}
