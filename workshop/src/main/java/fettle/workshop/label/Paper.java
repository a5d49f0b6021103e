package fettle.workshop.label;

/** Sizes of paper (ISO 216:2007; ANSI/ASME Y14.1: letter is 8.5 in × 11 in). */
public enum Paper {
    A4("A4", 210, 297),
    LETTER("letter", 215.9, 279.4);

    private final String label;
    private final double widthMillimetres;
    private final double heightMillimetres;

    Paper(String label, double widthMillimetres, double heightMillimetres) {
        this.label = label;
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    public String label() {
        return label;
    }

    public double widthMillimetres() {
        return widthMillimetres;
    }

    public double heightMillimetres() {
        return heightMillimetres;
    }
}
