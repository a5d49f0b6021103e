package fettle.workshop.entry;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.units.Figure;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the words behind {@code charged}. Not thread-safe. */
final class ChargeLine {
    private static final List<String> KEYWORDS = List.of("to", "pack");
    private static final String EXPECTED = "the put-back, e.g. 3100mAh, to 16.80V, 31C, note or at 18:30";

    /** A bare put-back from here on can only be mAh: nobody puts twenty ampere-hours into a craft's pack by hand. */
    private static final double LEAST_BARE_MILLIAMPERE_HOURS = 20;

    /** Up to here a number with a C behind it is as likely a charge rate as a temperature. Common practice, no source. */
    private static final double MOST_LIKELY_RATE = 10;

    private final Frame frame;
    private final Words words;
    private final Once<Double> coulombs = new Once<>("the put-back");
    private final PackVolts endVolts;

    ChargeLine(Frame frame, Words words) {
        this.frame = frame;
        this.words = words;
        this.endVolts = new PackVolts(frame, PackVolts.Use.END);
    }

    Optional<ChargeRecord> read() {
        while (words.hasNext()) {
            Word word = words.next();
            if (!refusesRate(word) && !frame.take(word, words)) {
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
            frame.unknown(word, KEYWORDS, EXPECTED);
        }
    }

    /** A rate is not kept, and one read as a temperature would make a cold charge of a fast one. */
    private boolean refusesRate(Word word) {
        Word said = word.is("at") ? words.peek().orElse(word) : word;
        Optional<Figure> rate = Quantities.figure(said)
                .filter(figure -> figure.unit().equalsIgnoreCase("c") && Math.abs(figure.value()) <= MOST_LIKELY_RATE);
        rate.ifPresent(figure -> {
            words.skip(said == word ? 0 : 1);
            frame.remarks()
                    .problem(
                            said,
                            "\"" + said.text() + "\" can be a rate or a temperature. Write " + figure.number()
                                    + "°C for a temperature; put a rate behind note.");
        });
        return rate.isPresent();
    }

    private void putBack(Word word) {
        boolean plainlyMilli = Quantities.figure(word)
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

    private void end(Word to) {
        String expected = "the volts of the whole pack, e.g. to 16.80V,";
        Optional<Word> pack = words.nextIf(word -> word.is("pack"));
        frame.quantities()
                .behind(pack.orElse(to), words, Quantities::isNumber, expected)
                .ifPresent(figure -> {
                    if (pack.isPresent()) {
                        endVolts.readWhole(figure);
                    } else {
                        endVolts.read(figure, words);
                    }
                });
    }
}
