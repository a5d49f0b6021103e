package fettle.book.intake;

/** What a positive figure in a log's current column means. */
public enum PositiveCurrent {
    DISCHARGES("discharge"),
    CHARGES("charge"),
    UNCLEAR("unclear");

    private final String key;

    PositiveCurrent(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    /** Factor from the log's sign to ours, discharge positive. */
    double toDischargePositive() {
        return this == CHARGES ? -1 : 1;
    }
}
