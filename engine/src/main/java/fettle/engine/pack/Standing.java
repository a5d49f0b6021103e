package fettle.engine.pack;

/** A pack's overall state, worst last but one; each with word and glyph, never colour alone. */
public enum Standing {
    READY("ready", "✓"),
    TEND("tend", "↻"),
    LIMITED("limited", "◑"),
    UNPROVEN("unproven", "?"),
    GROUNDED("grounded", "✕"),
    RETIRED("retired", "—");

    private final String word;
    private final String glyph;

    Standing(String word, String glyph) {
        this.word = word;
        this.glyph = glyph;
    }

    public String word() {
        return word;
    }

    public String glyph() {
        return glyph;
    }
}
