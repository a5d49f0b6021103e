package fettle.engine.travel;

/** The three bands of rating that passenger rules know. */
public enum RatingBand {
    FREE("up to 100 Wh"),
    WITH_APPROVAL("over 100 Wh, up to 160 Wh"),
    TOO_LARGE("over 160 Wh");

    private final String label;

    RatingBand(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
