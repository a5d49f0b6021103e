package fettle.workshop.entry;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Run;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Reads the words behind {@code ran}. Not thread-safe. */
final class RunLine {
    private static final String EXPECTED =
            "the craft, how long, e.g. 7.5min, left 30%, left 15.2V, 41C, note or at 18:30";

    /** Stands in for a run time that cannot be read, while the other words are checked. */
    private static final double ANY_SECONDS = 60;

    private final Frame frame;
    private final Words words;
    private final KnownKit kit;
    private final Once<String> craft = new Once<>("the craft");
    private final Once<Double> seconds = new Once<>("the run time");
    private final Once<Double> fraction = new Once<>("the share left");
    private final Once<Double> volts = new Once<>("the volts left");

    RunLine(Frame frame, Words words, KnownKit kit) {
        this.frame = frame;
        this.words = words;
        this.kit = kit;
    }

    /** @param ran the word {@code ran}, where a missing run time is told */
    Optional<Run> read(Word ran) {
        while (words.hasNext()) {
            Word word = words.next();
            if (word.quoted() || !frame.take(word, words)) {
                take(word);
            }
        }
        Double said = seconds.value();
        if (said == null && !frame.remarks().hasProblems()) {
            frame.remarks().problem(ran, "how long did it run? Write e.g. 7.5min.");
        }
        if (craft.value() == null && !frame.remarks().hasProblems()) {
            frame.remarks()
                    .question("which craft ran it? Without one the run says nothing about the craft's currents.");
        }
        return frame.make(
                () -> new Run(
                        frame.instant(),
                        Optional.ofNullable(craft.value()).orElse(""),
                        said == null ? ANY_SECONDS : said,
                        fraction.value(),
                        volts.value(),
                        frame.kelvins(),
                        frame.note()),
                "warmest");
    }

    private void take(Word word) {
        if (word.is("left")) {
            left(word);
        } else if (Quantities.isBare(word) || Quantities.is(word, Measure.DURATION)) {
            frame.quantities().seconds(word, words, "run time").ifPresent(si -> {
                if (seconds.put(word, si, frame.remarks())) {
                    frame.origin("duration", word);
                    frame.remarks().understood("ran " + DurationWords.of(si));
                }
            });
        } else if (Quantities.isNumber(word)) {
            frame.unknown(word, EXPECTED);
        } else {
            craft(word);
        }
    }

    private void left(Word keyword) {
        Optional<Word> figure = frame.quantities()
                .behind(keyword, words, Quantities::isNumber, "what remained, e.g. left 30% or left 15.2V,");
        figure.ifPresent(word -> {
            if (Quantities.is(word, Measure.FRACTION)) {
                frame.quantities()
                        .si(word, "what remained", Measure.FRACTION, null)
                        .ifPresent(si -> {
                            if (fraction.put(word, si, frame.remarks())) {
                                frame.origin("remaining", word);
                                frame.remarks().understood(TradeUnit.PERCENT.print(si, 0) + " left");
                            }
                        });
            } else if (Quantities.is(word, Measure.VOLTAGE)) {
                frame.quantities()
                        .volts(word, "volts that remained")
                        .ifPresent(si -> PackVolts.put(frame, word, si, volts, "remainingPackVolts", "left"));
            } else {
                frame.remarks()
                        .problem(
                                word,
                                "\"" + word.text()
                                        + "\" left is neither a share nor volts. Write left 30% or left 15.2V.");
            }
        });
    }

    private void craft(Word first) {
        StringJoiner name = new StringJoiner(" ").add(first.text());
        while (!first.quoted() && words.peek().filter(RunLine::isName).isPresent()) {
            name.add(words.next().text());
        }
        Optional<Craft> known = kit.craft(name.toString());
        if (known.isEmpty()) {
            List<String> near = kit.craftNear(name.toString());
            String mend = near.isEmpty()
                    ? "There is no craft in this book yet. Add it first, or leave it out."
                    : "Nearest names: " + String.join(", ", near) + ". Put a name with spaces or figures in quotes.";
            frame.remarks().problem(first, "there is no craft \"" + name + "\" in this book. " + mend);
        } else if (craft.put(first, known.get().name(), frame.remarks())) {
            frame.remarks().understood("in " + known.get().name());
            askIfItTakesOtherCells(known.get());
        }
    }

    private void askIfItTakesOtherCells(Craft known) {
        Integer cells = known.cellsInSeries();
        KnownPack pack = frame.pack();
        if (cells != null && pack != null && cells != pack.pack().cellsInSeries()) {
            frame.remarks()
                    .question(known.name() + " is registered for " + cells + "S, and "
                            + pack.pack().tag() + " is " + pack.pack().arrangement() + ". Is it the right pack?");
        }
    }

    private static boolean isName(Word word) {
        boolean other = word.quoted()
                || word.is("left")
                || word.is("note")
                || Moment.begins(word)
                || Moment.isTime(word)
                || Quantities.isNumber(word);
        return !other;
    }
}
