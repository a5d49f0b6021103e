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
        return !word.quoted() && Figure.of(word.text()).isPresent();
    }

    static boolean isBare(Word word) {
        return isNumber(word)
                && Figure.of(word.text())
                        .map(Figure::unit)
                        .filter(String::isEmpty)
                        .isPresent();
    }

    static boolean is(Word word, Measure measure) {
        return !word.quoted() && QuantityText.measures(word.text(), measure);
    }

    Optional<Double> si(Word word, String what, Measure measure, @Nullable TradeUnit bare) {
        return remarks.read(word, () -> QuantityText.si("line", what, word.text(), measure, bare));
    }

    /** Volts; a bare number is in V, or in mV from 1000 on. */
    Optional<Double> volts(Word word, String what) {
        boolean thousands = Figure.of(word.text())
                .filter(figure -> Math.abs(figure.value()) >= LEAST_BARE_MILLIVOLTS)
                .isPresent();
        return si(word, what, Measure.VOLTAGE, thousands ? TradeUnit.MILLIVOLT : TradeUnit.VOLT);
    }

    /** A time, which may go on in the next words: {@code 1h 30min}. */
    Optional<Double> seconds(Word first, Words words, String what) {
        StringBuilder text = new StringBuilder(first.text());
        while (words.peek().filter(word -> is(word, Measure.DURATION)).isPresent()) {
            text.append(' ').append(words.next().text());
        }
        return remarks.read(first, () -> QuantityText.si("line", what, text.toString(), Measure.DURATION, null));
    }

    /** The word a keyword needs behind it, or a problem at the keyword. */
    Optional<Word> behind(Word keyword, Words words, Predicate<Word> fits, String expected) {
        Optional<Word> next = words.peek().filter(fits);
        if (next.isEmpty()) {
            remarks.problem(keyword, "\"" + keyword.text() + "\" needs " + expected + " behind it.");
            return Optional.empty();
        }
        return Optional.of(words.next());
    }
}
