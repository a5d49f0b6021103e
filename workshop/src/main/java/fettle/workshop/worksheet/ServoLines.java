package fettle.workshop.worksheet;

import fettle.engine.supply.receiver.Basis;
import fettle.engine.supply.receiver.ServoDraw;
import fettle.engine.supply.wire.Conductor;
import fettle.engine.supply.wire.Lead;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.TypedLines;
import java.util.List;
import java.util.Locale;

/** Servos and leads as lines of text with semicolons between. */
final class ServoLines {
    private static final double ROOM = TradeUnit.CELSIUS.toSi(25);
    private static final int PARTS = 7;

    /** One mated servo connector, there and back; from memory (0.1 to 1 mΩ a contact when new, more when worn). */
    private static final double CONNECTOR_OHMS = TradeUnit.MILLIOHM.toSi(5);

    private ServoLines() {}

    static List<ServoDraw> servos(String typed) {
        return TypedLines.read("servos", typed, ServoLines::servo);
    }

    /** A lead as {@code 150 mm; 22}. */
    static Lead lead(String typed, double contactOhms) {
        String[] parts = typed.split(";");
        if (parts.length != 2) {
            throw new InputException("feed", "the lead is \"" + typed + "\"; expected length; AWG, e.g. 150 mm; 22.");
        }
        return lead(parts[0], parts[1], contactOhms);
    }

    private static ServoDraw servo(String line) {
        String[] parts = line.split(";");
        if (parts.length != PARTS) {
            throw new InputException(
                    "servos",
                    parts.length + " parts; expected " + PARTS
                            + ": name; at rest; moving; stalled; lead length; AWG; measured, data or assumed.");
        }
        return new ServoDraw(
                parts[0].strip(),
                amps("current at rest", parts[1]),
                amps("moving current", parts[2]),
                amps("stall current", parts[3]),
                basis(parts[6]),
                lead(parts[4], parts[5], CONNECTOR_OHMS));
    }

    private static Lead lead(String length, String awg, double contactOhms) {
        double metres = QuantityText.si("servos", "lead length", length, Measure.LENGTH, TradeUnit.MILLIMETRE);
        String number = awg.strip().toUpperCase(Locale.ROOT).replaceFirst("^AWG\\s*", "");
        if (!number.matches("\\d{1,2}")) {
            throw new InputException("servos", "wire is \"" + awg.strip() + "\"; expected an AWG number, e.g. 22.");
        }
        return new Lead(Conductor.awg(Integer.parseInt(number)), metres, ROOM, contactOhms);
    }

    private static double amps(String what, String typed) {
        return QuantityText.si("servos", what, typed, Measure.CURRENT, null);
    }

    private static Basis basis(String typed) {
        return switch (typed.strip().toLowerCase(Locale.ROOT)) {
            case "measured" -> Basis.MEASURED;
            case "data" -> Basis.DATA;
            case "assumed" -> Basis.ASSUMED;
            default ->
                throw new InputException("servos", "\"" + typed.strip() + "\" is none of measured, data, assumed.");
        };
    }
}
