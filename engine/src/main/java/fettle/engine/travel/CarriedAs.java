package fettle.engine.travel;

/** How a passenger carries a pack. */
public enum CarriedAs {
    SPARE("spare"),
    INSTALLED("in the craft"),
    POWER_BANK("power bank");

    private final String label;

    CarriedAs(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
