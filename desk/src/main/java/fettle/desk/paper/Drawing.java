package fettle.desk.paper;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One sheet with marks at their places. Lengths are millimetres, x to the right and y down from the upper left corner.
 *
 * @param widthMillimetres width of the sheet
 * @param heightMillimetres height of the sheet
 * @param frames outlines, drawn on the screen only
 * @param blocks filled rectangles
 * @param words texts
 */
public record Drawing(
        double widthMillimetres, double heightMillimetres, List<Block> frames, List<Block> blocks, List<Words> words) {
    public Drawing {
        frames = List.copyOf(frames);
        blocks = List.copyOf(blocks);
        words = List.copyOf(words);
    }

    /** A rectangle. */
    public record Block(double x, double y, double width, double height) {}

    /** A text; {@code y} is its base line, {@code size} the height of its type. */
    public record Words(double x, double y, double size, boolean bold, String text) {}

    /** All filled rectangles as one path of SVG. */
    public String path() {
        return path(blocks);
    }

    /** All outlines as one path of SVG. */
    public String outlines() {
        return path(frames);
    }

    private static String path(List<Block> blocks) {
        return blocks.stream()
                .map(block -> String.format(
                        Locale.ROOT,
                        "M%.3f %.3fh%.3fv%.3fh%.3fz",
                        block.x(),
                        block.y(),
                        block.width(),
                        block.height(),
                        -block.width()))
                .collect(Collectors.joining());
    }
}
