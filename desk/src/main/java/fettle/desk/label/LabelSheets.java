package fettle.desk.label;

import fettle.desk.paper.Drawing;
import fettle.desk.paper.Drawing.Block;
import fettle.desk.paper.Drawing.Words;
import fettle.desk.paper.DrawingPdf;
import fettle.desk.paper.TypeMeasure;
import fettle.engine.rule.Quantity;
import fettle.engine.units.TradeUnit;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import fettle.workshop.label.PackLabel;
import java.util.ArrayList;
import java.util.List;

/** Lays labels out on sheets. On one: tag large, then chemistry and cells, capacity and charge limit, and the code. */
public final class LabelSheets {
    private static final double LARGEST_TAG = 0.36;
    private static final double LARGEST_LINE = 0.13;
    private static final double LINE = 1.3;
    private static final double LARGEST_CODE_OF_WIDTH = 0.45;

    private LabelSheets() {}

    /** The labels as PDF. */
    public static byte[] pdf(LabelRun run) {
        return DrawingPdf.of("Pack labels", of(run));
    }

    /** The sheets, each with its labels. */
    static List<Drawing> of(LabelRun run) {
        List<Drawing> sheets = new ArrayList<>();
        LabelGrid grid = run.sheet();
        for (int sheet = 0; sheet < run.sheets(); sheet++) {
            List<Block> frames = new ArrayList<>();
            List<Block> blocks = new ArrayList<>();
            List<Words> words = new ArrayList<>();
            for (int place = 0; place < grid.count(); place++) {
                int label = sheet * grid.count() + place - (run.start() - 1);
                if (label >= 0 && label < run.labels().size()) {
                    Block at = new Block(
                            grid.leftMillimetres(place),
                            grid.topMillimetres(place),
                            grid.widthMillimetres(),
                            grid.heightMillimetres());
                    frames.add(at);
                    draw(run.labels().get(label), at, blocks, words);
                }
            }
            sheets.add(new Drawing(
                    grid.paper().widthMillimetres(), grid.paper().heightMillimetres(), frames, blocks, words));
        }
        return sheets;
    }

    private static void draw(PackLabel label, Block at, List<Block> blocks, List<Words> words) {
        double margin = at.height() * 0.08;
        double code = Math.min(at.height() - margin, at.width() * LARGEST_CODE_OF_WIDTH);
        double right = at.x() + at.width() - margin / 2;
        blocks.addAll(SquareCode.of(label.code(), right - code, at.y() + (at.height() - code) / 2, code));
        double width = at.width() - code - 2 * margin;
        double left = at.x() + margin;
        double tag = TypeMeasure.fitting(label.tag(), true, width, at.height() * LARGEST_TAG);
        double line = lines(label).stream()
                .mapToDouble(text -> TypeMeasure.fitting(text, false, width, at.height() * LARGEST_LINE))
                .min()
                .orElseThrow();
        double free = at.height() - tag - lines(label).size() * line * LINE;
        double y = at.y() + free / 2 + tag * 0.8;
        words.add(new Words(left, y, tag, true, label.tag()));
        y += tag * 0.2;
        for (String text : lines(label)) {
            y += line * LINE;
            words.add(new Words(left, y, line, text.startsWith(LIMIT), text));
        }
    }

    private static final String LIMIT = "charge to ";

    /** What stands below the tag. */
    static List<String> lines(PackLabel label) {
        return List.of(
                label.chemistry() + " " + label.cells(),
                TradeUnit.MILLIAMPERE_HOUR.print(label.ratedCapacityCoulombs(), 0),
                label.chargeLimitVolts() == null
                        ? "not confirmed"
                        : LIMIT + Quantity.CHARGE_LIMIT.print(label.chargeLimitVolts()));
    }
}
