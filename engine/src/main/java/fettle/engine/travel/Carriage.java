package fettle.engine.travel;

/** What may be done with a pack, the freest first. */
public enum Carriage {
    CABIN("cabin"),
    CABIN_OR_HOLD("cabin; the hold only in a craft that is off and guarded"),
    CABIN_WITH_APPROVAL("cabin, once the carrier has approved it"),
    NOT_BY_AIR("not as baggage");

    private final String label;

    Carriage(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
