package fettle.planner.solve;

/** Minutes in whole steps. */
final class Ticks {
    private Ticks() {}

    /** Steps that hold so many minutes. */
    static int up(int minutes, int stepMinutes) {
        return Math.floorDiv(minutes + stepMinutes - 1, stepMinutes);
    }
}
