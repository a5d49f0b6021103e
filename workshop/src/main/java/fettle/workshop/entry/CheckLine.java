package fettle.workshop.entry;

import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the words of a check, in any order. Not thread-safe. */
final class CheckLine {
    private static final List<String> KEYWORDS = List.of("pack", "rest", "rested", "ir", "by");
    private static final String EXPECTED =
            "volts, pack 15.36V, 21C, rest 2h, ir 2.1 2.2, swollen, damaged, smells, note or at 18:30";

    /** Stands in for a reading that cannot be read, while the others are checked. */
    private static final double ANY_VOLTS = 1;

    private final Frame frame;
    private final Words words;
    private final Remarks remarks;
    private final CellReadings cells = new CellReadings("cellRestVolts", "cell reading");
    private final PackVolts packVolts;
    private final Once<Double> restSeconds = new Once<>("the rest");
    private final Resistance resistance;
    private final Signs signs = new Signs();

    /** True once a word that may have been meant as a reading was not understood; then one missing is no news. */
    private boolean unclearReading;

    CheckLine(Frame frame, Words words) {
        this.frame = frame;
        this.words = words;
        this.remarks = frame.remarks();
        this.packVolts = new PackVolts(frame, PackVolts.Use.REST);
        this.resistance = new Resistance(frame);
    }

    static boolean knows(Word word) {
        return Signs.isSign(word) || KEYWORDS.stream().anyMatch(word::is);
    }

    Optional<Check> read() {
        while (words.hasNext()) {
            Word word = words.next();
            if (!frame.take(word, words)) {
                take(word);
            }
        }
        compare();
        return frame.make(
                () -> new Check(
                        frame.instant(),
                        cells.si(),
                        packVolts.value(),
                        restSeconds.value(),
                        frame.kelvins(),
                        resistance.ohms(),
                        resistance.method(),
                        signs.seen(),
                        frame.note()),
                "temperature");
    }

    private void take(Word word) {
        if (Signs.isSign(word)) {
            signs.add(word, remarks);
        } else if (word.is("pack")) {
            pack(word);
        } else if (word.is("rest") || word.is("rested")) {
            rest(word);
        } else if (word.is("ir")) {
            resistance.read(word, words);
        } else if (Quantities.canBeVolts(word)) {
            volts(word);
        } else {
            unclearReading = unclearReading || Character.isDigit(word.text().charAt(0));
            frame.unknown(
                    word,
                    Stream.concat(KEYWORDS.stream(), Signs.KEYWORDS.stream()).toList(),
                    EXPECTED);
        }
    }

    private void volts(Word word) {
        if (isBeforePack()) {
            words.next();
            wholePack(word);
        } else if (isPlainlyPack(word)) {
            wholePack(word);
        } else {
            cell(word);
        }
    }

    /** {@code 15.4V pack}; but in {@code 3.84 pack 15.4V} the word belongs to what follows. */
    private boolean isBeforePack() {
        return words.nextIs("pack")
                && words.peek(1).filter(Quantities::canBeVolts).isEmpty();
    }

    /** A single figure no cell can have, of a pack of several. */
    private boolean isPlainlyPack(Word word) {
        boolean beyondCell = Quantities.figure(word)
                .filter(figure ->
                        figure.unit().equalsIgnoreCase("v") || figure.unit().isEmpty())
                .filter(figure -> figure.value() > PackVolts.MOST_CELL_VOLTS)
                .isPresent();
        return beyondCell && cells.isEmpty() && !isOneCell() && !words.nextIs(Quantities::canBeVolts);
    }

    private void cell(Word word) {
        int cell = cells.count() + 1;
        Optional<Double> volts = frame.quantities().volts(word, "cell " + cell);
        cells.add(word, volts, ANY_VOLTS, frame);
        volts.ifPresent(si -> remarks.understood("cell " + cell + " " + TradeUnit.VOLT.print(si, 3)));
    }

    private void pack(Word keyword) {
        frame.quantities()
                .behind(keyword, words, Quantities::isNumber, "the volts of the whole pack, e.g. pack 15.36V,")
                .ifPresent(this::wholePack);
    }

    /** The volts of a pack of one cell are that cell's. */
    private void wholePack(Word figure) {
        if (isOneCell()) {
            cell(figure);
        } else {
            packVolts.readWhole(figure);
        }
    }

    private boolean isOneCell() {
        KnownPack known = frame.pack();
        return known != null && known.pack().cellsInSeries() == 1;
    }

    private void rest(Word keyword) {
        if (words.nextIs("overnight")) {
            remarks.problem(words.next(), "\"overnight\" is no length of time. Write how long, e.g. rest 8h.");
            return;
        }
        frame.quantities()
                .behind(
                        keyword,
                        words,
                        word -> Quantities.isNumber(word) || ColonTime.isTime(word),
                        "the time since the last load or charge, e.g. rest 2h,")
                .ifPresent(word -> frame.quantities()
                        .seconds(word, words, "rest")
                        .ifPresent(si -> {
                            if (restSeconds.put(word, si, remarks)) {
                                frame.origin("restSeconds", word);
                                remarks.understood("rested " + DurationWords.of(si));
                            }
                        }));
    }

    /** Compares what was read with the pack: counts are problems, contradictions are questions. */
    private void compare() {
        KnownPack known = frame.pack();
        if (known == null) {
            return;
        }
        if (!cells.isEmpty() && fit(known.pack()) && cells.allWithin(0, PackVolts.MOST_CELL_VOLTS)) {
            Doubts.cells(known, cells.si()).forEach(remarks::question);
            askIfSumDiffers();
        }
        resistance.compare(known);
        Double whole = packVolts.possible();
        if (whole != null && cells.isEmpty()) {
            Doubts.packAlone(known, whole).forEach(remarks::question);
        }
    }

    private boolean fit(Pack pack) {
        boolean toldAlready = unclearReading && cells.count() < pack.cellsInSeries();
        return !toldAlready && cells.fits(pack, remarks, mendIfMore(pack), mendIfFewer(pack));
    }

    private String mendIfMore(Pack pack) {
        String mend = "Take the rest away, or correct the pack: cells are the balance-lead wires less one.";
        return cells.beyond(pack.cellsInSeries())
                .flatMap(Quantities::figure)
                .filter(figure -> figure.unit().isEmpty() && figure.value() > PackVolts.MOST_CELL_VOLTS)
                .map(figure -> "If " + figure.number() + " is the temperature, write " + figure.number() + "C. " + mend)
                .orElse(mend);
    }

    private static String mendIfFewer(Pack pack) {
        double typical = pack.chemistry().nominalVolts() * pack.cellsInSeries();
        return "Give one per cell, in balance-lead order, or the pack alone, e.g. pack "
                + TradeUnit.VOLT.print(typical, 1).replace(" ", "") + ".";
    }

    private void askIfSumDiffers() {
        Double whole = packVolts.value();
        if (whole != null) {
            Doubts.sum(cells.si(), whole).forEach(remarks::question);
        }
    }
}
