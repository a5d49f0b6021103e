package fettle.planner.validate;

import java.util.List;

/** One whole day of one pack. */
record EnumeratedDay(List<EnumeratedItem> items, long fullMinutes, int storage) {
    /** Value of its runs. */
    long value() {
        return items.stream().mapToLong(EnumeratedItem::value).sum();
    }
}
