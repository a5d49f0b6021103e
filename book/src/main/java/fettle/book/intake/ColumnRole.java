package fettle.book.intake;

/** What a column of a log is used for. */
public enum ColumnRole {
    TIME("time"),
    DATE("date"),
    WALL_CLOCK("wallclock"),
    PACK_VOLTS("volts"),
    CELL_VOLTS("cell"),
    AMPS("amps"),
    TEMPERATURE("temperature"),
    UNUSED("unused");

    private final String key;

    ColumnRole(String key) {
        this.key = key;
    }

    /** The word for it in mappings people write. */
    public String key() {
        return key;
    }
}
