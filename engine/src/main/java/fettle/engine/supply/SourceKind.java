package fettle.engine.supply;

/** What kind of thing feeds chargers. */
public enum SourceKind {
    MAINS("mains supply"),
    VEHICLE_BATTERY("vehicle battery"),
    FIELD_BATTERY("field battery"),
    GENERATOR("generator");

    private final String label;

    SourceKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
