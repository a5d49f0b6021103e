package fettle.desk;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads a PDF back. */
public final class PdfText {
    private static final int DOTS_AN_INCH = 300;

    private PdfText() {}

    /** Its words, every stretch of white space one space. */
    public static String of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static int pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One page as it comes out of a printer of 300 dots an inch. */
    public static BufferedImage page(byte[] pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(page, DOTS_AN_INCH);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the square code inside a rectangle of a page says, in millimetres; empty where none can be read. */
    public static String code(BufferedImage page, double x, double y, double width, double height) {
        BufferedImage image = page.getSubimage(dots(x), dots(y), dots(width), dots(height));
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource light = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        try {
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(light)), Map.of(DecodeHintType.TRY_HARDER, true))
                    .getText();
        } catch (ReaderException none) {
            return "";
        }
    }

    private static int dots(double millimetres) {
        return (int) (millimetres / 25.4 * DOTS_AN_INCH);
    }
}
