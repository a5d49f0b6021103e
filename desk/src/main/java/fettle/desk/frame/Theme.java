package fettle.desk.frame;

/** How pages are coloured. */
public enum Theme {
    PAPER("Paper", "light"),
    DARK("Dark", "dark"),
    SUNLIGHT("Sunlight", "light");

    private final String label;
    private final String scheme;

    Theme(String label, String scheme) {
        this.label = label;
        this.scheme = scheme;
    }

    public String label() {
        return label;
    }

    /** What the browser is told, for its own scroll bars and fields. */
    public String scheme() {
        return scheme;
    }

    /** Its word in the style sheet, in cookies and in forms. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
