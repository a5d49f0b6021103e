package fettle.planner.problem;

/** Where something is. */
public enum Place {
    HOME("home"),
    FIELD("the field");

    private final String label;

    Place(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
