package fettle.desk.label;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import fettle.desk.paper.Drawing.Block;
import java.util.ArrayList;
import java.util.List;

/** A QR code (ISO/IEC 18004) as dark blocks, with its quiet zone of four modules inside the square it is given. */
final class SquareCode {
    private static final int QUIET_MODULES = 4;

    private SquareCode() {}

    /** Blocks of a code in a square; dark modules side by side are one block. */
    static List<Block> of(String text, double left, double top, double side) {
        ByteMatrix modules = modules(text);
        double module = side / (modules.getWidth() + 2 * QUIET_MODULES);
        List<Block> blocks = new ArrayList<>();
        for (int row = 0; row < modules.getHeight(); row++) {
            int column = 0;
            while (column < modules.getWidth()) {
                int length = darkRun(modules, column, row);
                if (length > 0) {
                    blocks.add(new Block(
                            left + (QUIET_MODULES + column) * module,
                            top + (QUIET_MODULES + row) * module,
                            length * module,
                            module));
                }
                column += length + 1;
            }
        }
        return blocks;
    }

    private static int darkRun(ByteMatrix modules, int from, int row) {
        int length = 0;
        while (from + length < modules.getWidth() && modules.get(from + length, row) == 1) {
            length++;
        }
        return length;
    }

    private static ByteMatrix modules(String text) {
        try {
            // medium correction: a scuffed label is still read
            return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a code: " + text, e);
        }
    }
}
