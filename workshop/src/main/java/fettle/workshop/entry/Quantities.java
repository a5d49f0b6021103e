package fettle.workshop.entry;

import fettle.engine.units.Figure;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Quantities among the words of a line. Not thread-safe. */
final class Quantities {
    /** A bare reading from here on is in millivolts: no cell or pack Fettle knows has a thousand volts. */
    private static final double LEAST_BARE_MILLIVOLTS = 1_000;

    private final Remarks remarks;

    Quantities(Remarks remarks) {
        this.remarks = remarks;
    }

    static boolean isNumber(Word word) {
        return figure(word).isPresent();
    }

    static boolean isBare(Word word) {
        return figure(word).map(Figure::unit).filter(String::isEmpty).isPresent();
    }

    static boolean is(Word word, Measure measure) {
        return !word.quoted() && QuantityText.measures(word.text(), measure);
    }

    /** True for a bare number or one in V or mV. */
    static boolean canBeVolts(Word word) {
        return isBare(word) || is(word, Measure.VOLTAGE);
    }

    /** The number and unit of a word. */
    static Optional<Figure> figure(Word word) {
        return word.quoted() ? Optional.empty() : Figure.of(word.text());
    }

    Optional<Double> si(Word word, String what, Measure measure, @Nullable TradeUnit bare) {
        return remarks.read(word, () -> QuantityText.si("line", what, word.text(), measure, bare));
    }

    /** Volts; a bare number is in V, or in mV from 1000 on. */
    Optional<Double> volts(Word word, String what) {
        boolean thousands = figure(word)
                .filter(figure -> Math.abs(figure.value()) >= LEAST_BARE_MILLIVOLTS)
                .isPresent();
        return si(word, what, Measure.VOLTAGE, thousands ? TradeUnit.MILLIVOLT : TradeUnit.VOLT);
    }

    /** A length of time, which may go on in the next words: {@code 1h 30min}. */
    Optional<Double> seconds(Word first, Words words, String what) {
        if (ColonTime.isTime(first)) {
            remarks.problem(first, ColonTime.twoLengths(first));
            return Optional.empty();
        }
        String text = first.text();
        String longer = longer(text, words);
        while (QuantityText.measures(longer, Measure.DURATION)) {
            words.next();
            text = longer;
            longer = longer(text, words);
        }
        String whole = text;
        return remarks.read(first, () -> QuantityText.si("line", what, whole, Measure.DURATION, null));
    }

    /** The text with the next word, if that has a unit of time; else nothing. */
    private static String longer(String text, Words words) {
        return words.peek()
                .filter(word -> is(word, Measure.DURATION))
                .map(word -> text + " " + word.text())
                .orElse("");
    }

    /** The word a keyword needs behind it, or a problem at the keyword. */
    Optional<Word> behind(Word keyword, Words words, Predicate<Word> fits, String expected) {
        Optional<Word> next = words.nextIf(fits);
        if (next.isEmpty()) {
            remarks.problem(keyword, "\"" + keyword.text() + "\" needs " + expected + " behind it.");
        }
        return next;
    }
}
