package fettle.engine.travel;

/** How lithium packs are sent as cargo or by post. */
public enum ShippedAs {
    ALONE("alone", "UN3480"),
    WITH_EQUIPMENT("packed with the craft", "UN3481"),
    IN_EQUIPMENT("in the craft", "UN3481");

    private final String label;
    private final String number;

    ShippedAs(String label, String number) {
        this.label = label;
        this.number = number;
    }

    public String label() {
        return label;
    }

    /** UN number of the goods. */
    public String number() {
        return number;
    }
}
