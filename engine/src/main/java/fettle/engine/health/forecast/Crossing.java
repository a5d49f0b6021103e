package fettle.engine.health.forecast;

/**
 * When a limit is crossed, counted from the last reading; infinite where the trend may never get there.
 *
 * @param low cycles, 2.5 % point
 * @param median cycles, as likely before as after
 * @param high cycles, 97.5 % point
 */
public record Crossing(double low, double median, double high) {
    /** The same in days, at so many cycles a day. */
    public Crossing days(double cyclesPerDay) {
        return new Crossing(low / cyclesPerDay, median / cyclesPerDay, high / cyclesPerDay);
    }
}
