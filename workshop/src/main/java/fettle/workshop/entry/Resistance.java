package fettle.workshop.entry;

import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** Reads {@code ir 2.1 2.2 2.0 2.4 by charger}: resistance per cell and how it was measured. Not thread-safe. */
final class Resistance {
    /** Stands in for a reading that cannot be read, while the others are checked. */
    private static final double ANY_OHMS = 1e-3;

    private final Frame frame;
    private final CellReadings ohms = new CellReadings("cellResistanceOhms", "resistance reading");
    private final Once<Boolean> given = new Once<>("resistance");
    private final Once<String> method = new Once<>("the method");

    Resistance(Frame frame) {
        this.frame = frame;
    }

    void read(Word ir, Words words) {
        boolean first = given.put(ir, true, frame.remarks());
        boolean any = false;
        while (words.nextIs(Resistance::isResistance)) {
            Word word = words.next();
            any = true;
            if (first) {
                cell(word);
            }
        }
        if (!any) {
            frame.remarks()
                    .problem(
                            ir,
                            "\"" + ir.text()
                                    + "\" needs one resistance per cell behind it, in mΩ, e.g. ir 2.1 2.2 2.0 2.4.");
        }
        words.nextIf(word -> word.is("by")).ifPresent(by -> method(by, words));
    }

    /** A problem if there are resistances, but not one for each cell. */
    void compare(KnownPack known) {
        if (!ohms.isEmpty()) {
            ohms.fits(
                    known.pack(),
                    frame.remarks(),
                    "Take the rest away; volts stand before ir.",
                    "Give one per cell, in balance-lead order.");
        }
    }

    List<Double> ohms() {
        return ohms.si();
    }

    String method() {
        return Optional.ofNullable(method.value()).orElse("");
    }

    private void cell(Word word) {
        int cell = ohms.count() + 1;
        Optional<Double> value =
                frame.quantities().si(word, "resistance of cell " + cell, Measure.RESISTANCE, TradeUnit.MILLIOHM);
        ohms.add(word, value, ANY_OHMS, frame);
        value.ifPresent(si -> frame.remarks().understood("cell " + cell + " " + TradeUnit.MILLIOHM.print(si, 2)));
    }

    private void method(Word by, Words words) {
        StringJoiner text = new StringJoiner(" ");
        Word first = words.peek().orElse(by);
        while (words.nextIs(Resistance::isMethod)) {
            text.add(words.next().text());
        }
        if (text.length() == 0) {
            frame.remarks().problem(by, "\"by\" needs how resistance was measured behind it, e.g. by charger.");
        } else if (method.put(first, text.toString(), frame.remarks())) {
            frame.remarks().understood("resistance by " + text);
        }
    }

    private static boolean isResistance(Word word) {
        return Quantities.isBare(word) || Quantities.is(word, Measure.RESISTANCE);
    }

    private static boolean isMethod(Word word) {
        return !(Frame.knows(word) || CheckLine.knows(word) || Quantities.isNumber(word));
    }
}
