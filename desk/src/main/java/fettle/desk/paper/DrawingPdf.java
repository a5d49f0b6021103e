package fettle.desk.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Writes drawings as PDF, a page each. */
public final class DrawingPdf {
    private DrawingPdf() {}

    /** The document; {@code title} names it. */
    public static byte[] of(String title, List<Drawing> sheets) {
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle(title);
            PaperFont font = PaperFont.in(document);
            for (Drawing sheet : sheets) {
                draw(sheet, document, font);
            }
            return bytes(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void draw(Drawing sheet, PDDocument document, PaperFont font) throws IOException {
        try (Pen pen = new Pen(document, font, sheet.widthMillimetres(), sheet.heightMillimetres())) {
            for (Drawing.Block block : sheet.blocks()) {
                pen.block(block);
            }
            if (!sheet.blocks().isEmpty()) {
                pen.fill();
            }
            for (Drawing.Words words : sheet.words()) {
                pen.words(words);
            }
        }
    }

    static byte[] bytes(PDDocument document) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }
}
