package fettle.workshop.entry;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.units.Figure;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the words behind {@code charged}. Not thread-safe. */
final class ChargeLine {
    private static final String EXPECTED = "the put-back, e.g. 3100mAh, to 16.80V, 31C, note or at 18:30";

    /** A bare put-back from here on can only be mAh: nobody puts twenty ampere-hours into a craft's pack by hand. */
    private static final double LEAST_BARE_MILLIAMPERE_HOURS = 20;

    private final Frame frame;
    private final Words words;
    private final Once<Double> coulombs = new Once<>("the put-back");
    private final Once<Double> endVolts = new Once<>("the end volts");

    ChargeLine(Frame frame, Words words) {
        this.frame = frame;
        this.words = words;
    }

    Optional<ChargeRecord> read() {
        while (words.hasNext()) {
            Word word = words.next();
            if (!frame.take(word, words)) {
                take(word);
            }
        }
        return frame.make(
                () -> new ChargeRecord(
                        frame.instant(), coulombs.value(), endVolts.value(), frame.kelvins(), frame.note()),
                "warmest");
    }

    private void take(Word word) {
        if (word.is("to")) {
            end(word);
        } else if (Quantities.isBare(word) || Quantities.is(word, Measure.CHARGE)) {
            putBack(word);
        } else if (Quantities.is(word, Measure.VOLTAGE)) {
            frame.remarks().problem(word, "are those the volts at the end? Then write to " + word.text() + ".");
        } else {
            frame.unknown(word, EXPECTED);
        }
    }

    private void putBack(Word word) {
        boolean plainlyMilli = Figure.of(word.text())
                .filter(figure -> figure.value() >= LEAST_BARE_MILLIAMPERE_HOURS)
                .isPresent();
        @Nullable TradeUnit bare = plainlyMilli ? TradeUnit.MILLIAMPERE_HOUR : null;
        frame.quantities().si(word, "put-back", Measure.CHARGE, bare).ifPresent(si -> {
            if (coulombs.put(word, si, frame.remarks())) {
                frame.origin("returned", word);
                frame.remarks().understood("put back " + TradeUnit.MILLIAMPERE_HOUR.print(si, 0));
                KnownPack known = frame.pack();
                if (known != null) {
                    Doubts.putBack(known, si).forEach(frame.remarks()::question);
                }
            }
        });
    }

    private void end(Word keyword) {
        frame.quantities()
                .behind(keyword, words, Quantities::isNumber, "the volts of the whole pack, e.g. to 16.80V,")
                .ifPresent(word -> frame.quantities()
                        .volts(word, "end volts")
                        .ifPresent(si -> PackVolts.put(frame, word, si, endVolts, "endPackVolts", "ended at")));
    }
}
