package fettle.engine.trace;

/** What a pack was doing during a stretch of a trace. */
public enum SegmentKind {
    REST("rest"),
    RUN("run"),
    CHARGE_CONSTANT_CURRENT("charge, constant current"),
    CHARGE_CONSTANT_VOLTAGE("charge, constant voltage"),
    BALANCE("balance");

    private final String label;

    SegmentKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public boolean isCharge() {
        return this == CHARGE_CONSTANT_CURRENT || this == CHARGE_CONSTANT_VOLTAGE;
    }

    /** Whether current flows through the pack's main leads. */
    public boolean isLoaded() {
        return this == RUN || isCharge();
    }
}
