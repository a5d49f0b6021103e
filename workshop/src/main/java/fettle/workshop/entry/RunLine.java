package fettle.workshop.entry;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Run;
import fettle.engine.units.Measure;
import fettle.workshop.spelling.Spelling;
import java.util.List;
import java.util.Optional;

/** Reads the words behind {@code ran}. Not thread-safe. */
final class RunLine {
    private static final List<String> KEYWORDS = List.of("left", "pack", "in", "for");
    private static final String EXPECTED =
            "the craft, how long, e.g. 7.5min, left 30%, left 15.2V, 41C, note or at 18:30";

    /** Stands in for a run time that cannot be read, while the other words are checked. */
    private static final double ANY_SECONDS = 60;

    private final Frame frame;
    private final Words words;
    private final CraftWords names;
    private final Once<String> craft = new Once<>("the craft");
    private final Once<Double> seconds = new Once<>("the run time");
    private final Remaining remaining;
    private boolean craftAsked;

    RunLine(Frame frame, Words words, KnownKit kit) {
        this.frame = frame;
        this.words = words;
        this.names = new CraftWords(kit, frame.remarks());
        this.remaining = new Remaining(frame);
    }

    static boolean knows(Word word) {
        return KEYWORDS.stream().anyMatch(word::is);
    }

    /** @param ran the word {@code ran}, where a missing run time is told */
    Optional<Run> read(Word ran) {
        while (words.hasNext()) {
            Word word = words.next();
            boolean filler = (word.is("in") || word.is("for")) && words.hasNext();
            if (!filler && !isCraft(word) && !frame.take(word, words)) {
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
                        remaining.fraction(),
                        remaining.packVolts(),
                        frame.kelvins(),
                        frame.note()),
                "warmest");
    }

    private void take(Word word) {
        if (word.is("left")) {
            remaining.read(word, words);
        } else if (Remaining.isBefore(word, words)) {
            words.next();
            remaining.readFigure(word, words);
        } else if (Quantities.isBare(word) || Quantities.is(word, Measure.DURATION)) {
            duration(word);
        } else if (isNoName(word)) {
            frame.unknown(word, KEYWORDS, EXPECTED);
        } else {
            craftAsked = true;
            names.unknown(word, words);
        }
    }

    private void duration(Word word) {
        frame.quantities().seconds(word, words, "run time").ifPresent(si -> {
            if (seconds.put(word, si, frame.remarks())) {
                frame.origin("duration", word);
                frame.remarks().understood("ran " + DurationWords.of(si));
            }
        });
    }

    /** True for a word that is rather a slip of something else than a mistyped name of a craft. */
    private boolean isNoName(Word word) {
        return craft.value() != null
                || craftAsked
                || Quantities.isNumber(word)
                || Hints.isKnown(word)
                || Spelling.meant(word.text(), KEYWORDS).isPresent();
    }

    /** Takes the name of a registered craft, or tells of the first quoted name that is none. */
    private boolean isCraft(Word word) {
        if (knows(word)) {
            return false;
        }
        Optional<Craft> known = names.known(word, words);
        known.ifPresent(found -> {
            if (craft.put(word, found.name(), frame.remarks())) {
                frame.remarks().understood("in " + found.name());
                askIfItTakesOtherCells(found);
            }
        });
        boolean unknownName = known.isEmpty() && word.quoted() && craft.value() == null && !craftAsked;
        if (unknownName) {
            craftAsked = true;
            names.unknown(word, words);
        }
        return known.isPresent() || unknownName;
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
}
