package fettle.planner.problem;

/** What a charge job brings its packs to. */
public enum Target {
    FULL("to full"),
    STORAGE("to storage");

    private final String label;

    Target(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
