package fettle.workshop.entry;

import fettle.engine.pack.Pack;
import fettle.engine.rule.Quantity;
import fettle.engine.units.TradeUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Volts of a whole pack, which may be said per cell: {@code 16.8V}, {@code 4.2V/cell}, {@code 4.2V per cell}.
 *
 * <p>One cell's volts said of a pack of several, with no word about it, are taken per cell only where the whole pack at
 * so few volts is past belief, and are asked about even then; else the person must say which. Not thread-safe.
 */
final class PackVolts {
    /** No rechargeable cell Fettle knows reaches this [V]; the same bound as for a cell of a check. */
    static final double MOST_CELL_VOLTS = 5;

    /** Below this share of its rest minimum a pack runs no receiver. Common practice, no source. */
    private static final double BELIEVABLE_SHARE_OF_REST_MINIMUM = 0.5;

    /** Room for the last bit of a converted number. */
    private static final double LAST_BIT = 1e-9;

    private final Frame frame;
    private final Use use;
    private final Once<Double> volts;

    /** Which volts of the pack a line gives, and the words for them. */
    enum Use {
        REST("pack volts", "pack", "packRestVolts", "pack", "for the whole pack"),
        END("end volts", "to", "endPackVolts", "ended at", "at the end"),
        REMAINING("volts that remained", "left", "remainingPackVolts", "left", "after the run");

        private final String noun;
        private final String keyword;
        private final String field;
        private final String phrase;
        private final String when;

        Use(String noun, String keyword, String field, String phrase, String when) {
            this.noun = noun;
            this.keyword = keyword;
            this.field = field;
            this.phrase = phrase;
            this.when = when;
        }
    }

    PackVolts(Frame frame, Use use) {
        this.frame = frame;
        this.use = use;
        this.volts = new Once<>(use.noun);
    }

    /** Reads a figure that may be the pack's or one cell's; {@code words} may go on with {@code per cell}. */
    void read(Word figure, Words words) {
        Optional<Double> read = frame.quantities().volts(figure, use.noun);
        boolean perCell = perCell(words);
        read.flatMap(si -> whole(figure, si, perCell)).ifPresent(si -> keep(figure, si));
    }

    /** Reads a figure that is said to be the whole pack's. */
    void readWhole(Word figure) {
        frame.quantities().volts(figure, use.noun).ifPresent(si -> keep(figure, si));
    }

    @Nullable
    Double value() {
        return volts.value();
    }

    /** The volts, unless the pack cannot have them. */
    @Nullable
    Double possible() {
        Double said = volts.value();
        KnownPack known = frame.pack();
        return said == null || known == null || isImpossible(said, known) ? null : said;
    }

    private Optional<Double> whole(Word figure, double si, boolean perCell) {
        KnownPack known = frame.pack();
        if (known == null) {
            return Optional.of(si);
        }
        int cells = known.pack().cellsInSeries();
        double restMinimum = known.limits().si(Quantity.REST_MINIMUM);
        if (perCell) {
            return Optional.of(si * cells);
        }
        if (si / cells >= restMinimum || !couldBeOneCell(known, si)) {
            return Optional.of(si);
        }
        if (si / cells < BELIEVABLE_SHARE_OF_REST_MINIMUM * restMinimum) {
            frame.remarks().question(takenPerCell(known, si));
            return Optional.of(si * cells);
        }
        frame.remarks().problem(figure, whichOfTwo(known, si));
        return Optional.empty();
    }

    private static boolean couldBeOneCell(KnownPack known, double si) {
        return si >= known.limits().si(Quantity.REST_MINIMUM) - LAST_BIT
                && si <= known.limits().si(Quantity.CHARGE_LIMIT) + LAST_BIT;
    }

    private String takenPerCell(KnownPack known, double si) {
        String one = TradeUnit.VOLT.print(si, 2);
        return one + " is taken as the volts per cell, "
                + TradeUnit.VOLT.print(si * known.pack().cellsInSeries(), 2)
                + " for the pack. If the whole pack read " + one + ", write " + use.keyword + " pack "
                + typed(si) + ", and do not charge it before it is inspected.";
    }

    private String whichOfTwo(KnownPack known, double si) {
        return TradeUnit.VOLT.print(si, 2) + " could be the whole pack or one cell of "
                + known.pack().tag()
                + ", which is " + known.pack().arrangement() + ". Write " + use.keyword + " " + typed(si) + "/cell or "
                + use.keyword + " pack " + typed(si) + ".";
    }

    private static String typed(double si) {
        return TradeUnit.VOLT.print(si, 2).replace(" ", "");
    }

    private void keep(Word figure, double si) {
        if (!volts.put(figure, si, frame.remarks())) {
            return;
        }
        frame.origin(use.field, figure);
        frame.remarks().understood(phrase(si));
        KnownPack known = frame.pack();
        if (known != null && isImpossible(si, known)) {
            refuse(figure, si, known);
        } else if (known != null && use != Use.REST) {
            Doubts.packVolts(known, si, use.when).forEach(frame.remarks()::question);
        }
    }

    private static boolean isImpossible(double si, KnownPack known) {
        return si < 0 || si > known.pack().cellsInSeries() * MOST_CELL_VOLTS;
    }

    private void refuse(Word figure, double si, KnownPack known) {
        Pack pack = known.pack();
        double most = pack.cellsInSeries() * MOST_CELL_VOLTS;
        frame.remarks()
                .problem(
                        figure,
                        use.noun + " are " + TradeUnit.VOLT.print(si, 2) + " for " + pack.tag() + ", which is "
                                + pack.arrangement() + "; expected 0 to " + TradeUnit.VOLT.print(most, 0)
                                + ". Check the decimal point and the tag.");
    }

    /** {@code pack 15.36 V (3.840 V per cell)}. */
    private String phrase(double si) {
        KnownPack known = frame.pack();
        String perCell = known == null || known.pack().cellsInSeries() == 1
                ? ""
                : " (" + TradeUnit.VOLT.print(si / known.pack().cellsInSeries(), 3) + " per cell)";
        return use.phrase + " " + TradeUnit.VOLT.print(si, 2) + perCell;
    }

    /** Takes {@code /cell}, {@code each}, {@code per cell}, {@code a cell} or {@code / cell}. */
    private static boolean perCell(Words words) {
        if (words.nextIf(word -> word.is("/cell") || word.is("each")).isPresent()) {
            return true;
        }
        boolean two = words.nextIs(word -> word.is("per") || word.is("a") || word.is("/"))
                && words.peek(1).filter(word -> word.is("cell")).isPresent();
        words.skip(two ? 2 : 0);
        return two;
    }
}
