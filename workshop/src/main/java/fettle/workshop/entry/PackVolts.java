package fettle.workshop.entry;

import fettle.engine.units.TradeUnit;
import org.jspecify.annotations.Nullable;

/** Volts of a whole pack. */
final class PackVolts {
    /** No rechargeable cell Fettle knows reaches this [V]; the same bound as for a cell of a check. */
    private static final double MOST_CELL_VOLTS = 5;

    private PackVolts() {}

    /** A problem if the cells cannot have those volts together. */
    static void refuseImpossible(Frame frame, Word word, double volts) {
        KnownPack known = frame.pack();
        if (known == null) {
            return;
        }
        double most = known.pack().cellsInSeries() * MOST_CELL_VOLTS;
        if (volts < 0 || volts > most) {
            frame.remarks()
                    .problem(
                            word,
                            "pack volts are " + TradeUnit.VOLT.print(volts, 2) + " for "
                                    + known.pack().tag() + ", which is "
                                    + known.pack().arrangement()
                                    + "; expected 0 to " + TradeUnit.VOLT.print(most, 0)
                                    + ". Check the decimal point and the tag.");
        }
    }

    /** Keeps the pack volts of a charge's or a run's end, with the questions they raise. */
    static void put(Frame frame, Word word, double volts, Once<Double> place, String field, String what) {
        if (!place.put(word, volts, frame.remarks())) {
            return;
        }
        frame.origin(field, word);
        refuseImpossible(frame, word, volts);
        KnownPack known = frame.pack();
        frame.remarks().understood(phrase(what, volts, known));
        if (known != null) {
            Doubts.packVolts(known, volts, "at the end").forEach(frame.remarks()::question);
        }
    }

    /** {@code pack 15.36 V (3.840 V per cell)}. */
    static String phrase(String what, double volts, @Nullable KnownPack known) {
        String perCell = known == null || known.pack().cellsInSeries() == 1
                ? ""
                : " (" + TradeUnit.VOLT.print(volts / known.pack().cellsInSeries(), 3) + " per cell)";
        return what + " " + TradeUnit.VOLT.print(volts, 2) + perCell;
    }
}
