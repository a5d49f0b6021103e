package fettle.desk.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The type of printed papers: Liberation Sans, which comes with the PDF library, embedded in every document. */
final class PaperFont {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final double PER_EM = 1000;
    private static final String NOT_IN_IT = "?";

    /** Bold is drawn by a stroke around the letters, which makes them wider by about this much. */
    private static final double BOLD_WIDER = 1.05;

    private final PDFont font;

    private PaperFont(PDFont font) {
        this.font = font;
    }

    /** The type, embedded in a document. */
    static PaperFont in(PDDocument document) {
        try (InputStream file = PDDocument.class.getResourceAsStream(FILE)) {
            return new PaperFont(PDType0Font.load(document, Objects.requireNonNull(file, FILE), true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PDFont font() {
        return font;
    }

    /** The text as it can be set: what the type lacks is a question mark, spaces are plain. */
    String settable(String text) {
        StringBuilder settable = new StringBuilder();
        text.replaceAll("\\s", " ")
                .replace('\u00a0', ' ')
                .codePoints()
                .mapToObj(Character::toString)
                .forEach(letter -> settable.append(has(letter) ? letter : NOT_IN_IT));
        return settable.toString();
    }

    /** Width of a settable text in the unit of its size. */
    double width(String settable, double size, boolean bold) {
        try {
            return font.getStringWidth(settable) / PER_EM * size * (bold ? BOLD_WIDER : 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean has(String letter) {
        try {
            font.encode(letter);
            return true;
        } catch (IllegalArgumentException lacking) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
