package fettle.engine.working;

/** How far a figure can be traced. */
public enum CitationStatus {
    STANDARD("standard"),
    PUBLISHED("published"),
    COMMON_PRACTICE("common practice, no source"),
    MAKERS_LIMIT("maker's limit"),
    YOUR_OWN("your own"),
    FROM_MEMORY("from memory");

    private final String label;

    CitationStatus(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
