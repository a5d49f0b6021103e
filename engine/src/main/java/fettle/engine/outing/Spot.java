package fettle.engine.outing;

/** Where packs can be charged. */
public enum Spot {
    HOME("home"),
    FIELD("field");

    private final String label;

    Spot(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
