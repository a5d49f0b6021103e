package fettle.desk.paper;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws on one page of a PDF, in millimetres down from its upper left corner. */
final class Pen implements AutoCloseable {
    /** PDF user space is 72 units an inch (ISO 32000-1, 8.3.2.3). */
    private static final double UNITS_A_MILLIMETRE = 72 / 25.4;

    private static final float BOLD_STROKE = 0.035f;

    private final PDPageContentStream content;
    private final PaperFont font;
    private final double heightMillimetres;

    Pen(PDDocument document, PaperFont font, double widthMillimetres, double heightMillimetres) throws IOException {
        PDPage page = new PDPage(new PDRectangle(units(widthMillimetres), units(heightMillimetres)));
        document.addPage(page);
        this.content = new PDPageContentStream(document, page);
        this.font = font;
        this.heightMillimetres = heightMillimetres;
    }

    void block(Drawing.Block block) throws IOException {
        content.addRect(
                units(block.x()),
                units(heightMillimetres - block.y() - block.height()),
                units(block.width()),
                units(block.height()));
    }

    void fill() throws IOException {
        content.fill();
    }

    void words(Drawing.Words words) throws IOException {
        float size = units(words.size());
        content.beginText();
        content.setFont(font.font(), size);
        content.setRenderingMode(words.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        content.setLineWidth(size * BOLD_STROKE);
        content.newLineAtOffset(units(words.x()), units(heightMillimetres - words.y()));
        content.showText(font.settable(words.text()));
        content.endText();
    }

    /** A hairline across. */
    void rule(double fromX, double toX, double y) throws IOException {
        content.setLineWidth(0.4f);
        content.moveTo(units(fromX), units(heightMillimetres - y));
        content.lineTo(units(toX), units(heightMillimetres - y));
        content.stroke();
    }

    @Override
    public void close() throws IOException {
        content.close();
    }

    private static float units(double millimetres) {
        return (float) (millimetres * UNITS_A_MILLIMETRE);
    }
}
