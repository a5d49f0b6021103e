package fettle.desk.paper;

import org.apache.pdfbox.pdmodel.PDDocument;

/** How wide texts come out in print, so that they can be made to fit. Thread-safe. */
public final class TypeMeasure {
    // kept open for as long as the program runs: the type reads its letters from it
    private static final PaperFont FONT = PaperFont.in(new PDDocument());

    private TypeMeasure() {}

    /** The largest size, at most {@code largest}, at which the text is no wider than {@code width}. */
    public static synchronized double fitting(String text, boolean bold, double width, double largest) {
        double atOne = FONT.width(FONT.settable(text), 1, bold);
        return atOne * largest <= width ? largest : width / atOne;
    }
}
