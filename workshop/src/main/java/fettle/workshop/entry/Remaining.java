package fettle.workshop.entry;

import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a run left in the pack: a share, or volts. Not thread-safe. */
final class Remaining {
    private static final String EXPECTED = "what remained, e.g. left 30% or left 15.2V,";

    private final Frame frame;
    private final Once<Double> fraction = new Once<>("the share left");
    private final PackVolts volts;

    Remaining(Frame frame) {
        this.frame = frame;
        this.volts = new PackVolts(frame, PackVolts.Use.REMAINING);
    }

    /** True for a figure with {@code left} behind it: {@code 30% left}; not if {@code left} goes with what follows. */
    static boolean isBefore(Word word, Words words) {
        return measures(word)
                && words.nextIs("left")
                && words.peek(1)
                        .filter(next -> Quantities.isBare(next) || measures(next))
                        .isEmpty();
    }

    private static boolean measures(Word word) {
        return Quantities.is(word, Measure.FRACTION) || Quantities.is(word, Measure.VOLTAGE);
    }

    /** Reads what stands behind {@code left}. */
    void read(Word left, Words words) {
        Optional<Word> pack = words.nextIf(word -> word.is("pack"));
        frame.quantities()
                .behind(pack.orElse(left), words, Quantities::isNumber, EXPECTED)
                .ifPresent(figure -> {
                    if (pack.isPresent()) {
                        volts.readWhole(figure);
                    } else {
                        readFigure(figure, words);
                    }
                });
    }

    /** Reads a share or volts. */
    void readFigure(Word figure, Words words) {
        if (Quantities.is(figure, Measure.FRACTION)) {
            share(figure);
        } else if (Quantities.is(figure, Measure.VOLTAGE) || isPlainlyVolts(figure)) {
            volts.read(figure, words);
        } else {
            String number = Quantities.figure(figure).map(said -> said.number()).orElse(figure.text());
            frame.remarks()
                    .problem(
                            figure,
                            "\"" + figure.text() + "\" left is neither a share nor volts. Write left " + number
                                    + "% or left " + number + "V.");
        }
    }

    @Nullable
    Double fraction() {
        return fraction.value();
    }

    @Nullable
    Double packVolts() {
        return volts.value();
    }

    /** A bare figure with decimals in a cell's range: no one notes a share of a few per cent to the tenth. */
    private static boolean isPlainlyVolts(Word figure) {
        return Quantities.figure(figure)
                .filter(said -> said.unit().isEmpty() && said.number().matches("\\d[.,]\\d+"))
                .filter(said -> said.value() > 1 && said.value() <= PackVolts.MOST_CELL_VOLTS)
                .isPresent();
    }

    private void share(Word figure) {
        frame.quantities().si(figure, "what remained", Measure.FRACTION, null).ifPresent(si -> {
            if (fraction.put(figure, si, frame.remarks())) {
                frame.origin("remaining", figure);
                frame.remarks().understood(TradeUnit.PERCENT.print(si, 0) + " left");
            }
        });
    }
}
