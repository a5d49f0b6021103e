package fettle.desk.frame;

/** The places of the desk, in the order of the menu. */
public enum Place {
    TODAY("Today", "/"),
    KIT("Kit", "/kit"),
    TRACES("Traces", "/traces"),
    SETUPS("Set-ups", "/setups"),
    OUTINGS("Outings", "/outings"),
    RULES("Rules", "/kit/rules"),
    WORKSHEETS("Worksheets", "/worksheets"),
    JOURNAL("Journal", "/journal");

    private final String label;
    private final String path;

    Place(String label, String path) {
        this.label = label;
        this.path = path;
    }

    public String label() {
        return label;
    }

    public String path() {
        return path;
    }
}
