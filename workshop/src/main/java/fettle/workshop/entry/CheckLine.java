package fettle.workshop.entry;

import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads the words of a check, in any order. Not thread-safe. */
final class CheckLine {
    private static final String EXPECTED =
            "volts, pack 15.36V, 21C, rest 2h, ir 2.1 2.2, swollen, damaged, smells, note or at 18:30";
    private static final Map<String, Check.Sign> SIGNS = Map.of(
            "swollen", Check.Sign.SWELLING,
            "swelling", Check.Sign.SWELLING,
            "damaged", Check.Sign.DAMAGE,
            "damage", Check.Sign.DAMAGE,
            "smells", Check.Sign.SMELL,
            "smell", Check.Sign.SMELL);

    /** Stand in for readings that cannot be read, while the others are checked. */
    private static final double ANY_VOLTS = 1;

    private static final double ANY_OHMS = 1e-3;

    /** Cells and pack read with two meters differ by less than this. Common practice, no source. */
    private static final double MOST_DIFFERENCE_SHARE = 0.02;

    private final Frame frame;
    private final Words words;
    private final Remarks remarks;
    private final Quantities quantities;
    private final CellReadings cells = new CellReadings("cellRestVolts", "cell reading");
    private final CellReadings ohms = new CellReadings("cellResistanceOhms", "resistance reading");
    private final Once<Double> packVolts = new Once<>("pack volts");
    private final Once<Double> restSeconds = new Once<>("the rest");
    private final Once<String> method = new Once<>("the method");
    private final Once<Boolean> resistance = new Once<>("resistance");
    private final Set<Check.Sign> signs = new TreeSet<>();

    CheckLine(Frame frame, Words words) {
        this.frame = frame;
        this.words = words;
        this.remarks = frame.remarks();
        this.quantities = frame.quantities();
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
                        oneCellPack() ? List.of(packVoltsSaid()) : cells.si(),
                        oneCellPack() ? null : packVolts.value(),
                        restSeconds.value(),
                        frame.kelvins(),
                        ohms.si(),
                        Optional.ofNullable(method.value()).orElse(""),
                        signs,
                        frame.note()),
                "temperature");
    }

    private void take(Word word) {
        Check.Sign sign = word.quoted() ? null : SIGNS.get(word.text().toLowerCase(Locale.ROOT));
        if (sign != null) {
            sign(word, sign);
        } else if (word.is("pack")) {
            pack(word);
        } else if (word.is("rest")) {
            rest(word);
        } else if (word.is("ir")) {
            resistance(word);
        } else if (Quantities.isBare(word) || Quantities.is(word, Measure.VOLTAGE)) {
            int cell = cells.si().size() + 1;
            Optional<Double> volts = quantities.volts(word, "cell " + cell);
            cells.add(word, volts, ANY_VOLTS, frame);
            volts.ifPresent(si -> remarks.understood("cell " + cell + " " + TradeUnit.VOLT.print(si, 3)));
        } else {
            frame.unknown(word, EXPECTED);
        }
    }

    private void sign(Word word, Check.Sign sign) {
        if (signs.add(sign)) {
            remarks.understood(sign.label());
        } else {
            remarks.problem(word, "\"" + word.text() + "\" is given already. Take one away.");
        }
    }

    private void pack(Word keyword) {
        quantities
                .behind(keyword, words, Quantities::isNumber, "the volts of the whole pack, e.g. pack 15.36V,")
                .ifPresent(word -> quantities.volts(word, "pack volts").ifPresent(si -> {
                    if (packVolts.put(word, si, remarks)) {
                        frame.origin("packRestVolts", word);
                        PackVolts.refuseImpossible(frame, word, si);
                        remarks.understood(PackVolts.phrase("pack", si, frame.pack()));
                    }
                }));
    }

    private void rest(Word keyword) {
        quantities
                .behind(keyword, words, Quantities::isNumber, "the time since the last load or charge, e.g. rest 2h,")
                .ifPresent(word -> quantities.seconds(word, words, "rest").ifPresent(si -> {
                    if (restSeconds.put(word, si, remarks)) {
                        frame.origin("restSeconds", word);
                        remarks.understood("rested " + DurationWords.of(si));
                    }
                }));
    }

    private void resistance(Word keyword) {
        boolean fresh = resistance.put(keyword, true, remarks);
        boolean any = false;
        while (words.peek().filter(CheckLine::isResistance).isPresent()) {
            Word word = words.next();
            any = true;
            if (fresh) {
                cellResistance(word);
            }
        }
        if (!any) {
            remarks.problem(keyword, "\"ir\" needs one resistance per cell behind it, in mΩ, e.g. ir 2.1 2.2 2.0 2.4.");
        }
        words.peek().filter(word -> word.is("by")).ifPresent(by -> method(words.next()));
    }

    private void cellResistance(Word word) {
        int cell = ohms.si().size() + 1;
        Optional<Double> value =
                quantities.si(word, "resistance of cell " + cell, Measure.RESISTANCE, TradeUnit.MILLIOHM);
        ohms.add(word, value, ANY_OHMS, frame);
        value.ifPresent(si -> remarks.understood("cell " + cell + " " + TradeUnit.MILLIOHM.print(si, 2)));
    }

    private void method(Word keyword) {
        StringJoiner text = new StringJoiner(" ");
        Word first = words.peek().orElse(keyword);
        while (words.peek().filter(this::isMethod).isPresent()) {
            text.add(words.next().text());
        }
        if (text.length() == 0) {
            remarks.problem(keyword, "\"by\" needs how resistance was measured behind it, e.g. by charger.");
        } else if (method.put(first, text.toString(), remarks)) {
            remarks.understood("resistance by " + text);
        }
    }

    private static boolean isResistance(Word word) {
        return Quantities.isBare(word) || Quantities.is(word, Measure.RESISTANCE);
    }

    private boolean isMethod(Word word) {
        boolean keyword = Moment.begins(word)
                || SIGNS.containsKey(word.text().toLowerCase(Locale.ROOT))
                || List.of("pack", "rest", "ir", "by", "note")
                        .contains(word.text().toLowerCase(Locale.ROOT));
        return word.quoted() || !(keyword || Quantities.isNumber(word));
    }

    /** Compares what was read with the pack: counts are problems, contradictions are questions. */
    private void compare() {
        KnownPack known = frame.pack();
        if (known == null) {
            return;
        }
        Pack pack = known.pack();
        if (!cells.isEmpty() && cells.fits(pack, remarks, mendIfFewer(pack)) && cells.allRead()) {
            Doubts.cells(known, cells.si()).forEach(remarks::question);
            askIfSumDiffers();
        }
        if (!ohms.isEmpty()) {
            ohms.fits(pack, remarks, "give one per cell, in balance-lead order.");
        }
        Double said = packVolts.value();
        if (said != null && cells.isEmpty()) {
            Doubts.packVolts(known, said, "for the whole pack").forEach(remarks::question);
            askAboutPackVoltsAlone(pack);
        }
    }

    private String mendIfFewer(Pack pack) {
        boolean maybePack = cells.si().size() == 1 && packVolts.value() == null;
        return maybePack
                ? "is it the volts of the whole pack? Then write pack "
                        + TradeUnit.VOLT.print(cells.si().get(0), 2).replace(" ", "") + "; else give one per cell."
                : "give one per cell, in balance-lead order, or the pack alone, e.g. pack 15.36V.";
    }

    private void askIfSumDiffers() {
        Double said = packVolts.value();
        double sum = cells.si().stream().mapToDouble(Double::doubleValue).sum();
        if (said != null && Math.abs(said - sum) > MOST_DIFFERENCE_SHARE * sum) {
            remarks.question("the cells add up to " + TradeUnit.VOLT.print(sum, 2) + ", but the pack reads "
                    + TradeUnit.VOLT.print(said, 2) + ". Are the figures right?");
        }
    }

    private void askAboutPackVoltsAlone(Pack pack) {
        if (pack.cellsInSeries() > 1) {
            remarks.question(
                    "pack volts alone show no cell spread: a weak cell can hide behind the others. Read each cell "
                            + "before the next charge.");
            if (pack.identity() == Pack.Identity.UNCONFIRMED) {
                remarks.question("is " + pack.tag() + " really " + pack.arrangement()
                        + "? Nobody has confirmed it, and pack volts alone cannot tell. Count the balance-lead wires.");
            }
        }
    }

    /** The volts of a pack of one cell are that cell's. */
    private boolean oneCellPack() {
        KnownPack known = frame.pack();
        return known != null && known.pack().cellsInSeries() == 1 && cells.isEmpty() && packVolts.value() != null;
    }

    private double packVoltsSaid() {
        @Nullable Double said = packVolts.value();
        return said == null ? ANY_VOLTS : said;
    }
}
