package fettle.workshop;

import fettle.engine.supply.Port;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** One port of a charger as typed: {@code 20A 400W 6S bleed 0.5A discharge 25W}; the last two may be left out. */
final class PortText {
    private static final String QUANTITY = "([-+]?[\\d.,]+\\s*[A-Za-z]+)";
    private static final Pattern WRITTEN = Pattern.compile(
            QUANTITY + "\\s+" + QUANTITY + "\\s+(\\d{1,3})\\s*S(?:\\s+bleed\\s+" + QUANTITY + ")?(?:\\s+discharge\\s+"
                    + QUANTITY + ")?",
            Pattern.CASE_INSENSITIVE);

    private PortText() {}

    static Port parse(int number, String typed) {
        Matcher matcher = WRITTEN.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new InputException(
                    "ports",
                    "port " + number + " is \"" + typed.strip()
                            + "\"; expected amps, watts and cells, e.g. 20A 400W 6S bleed 0.5A discharge 25W.");
        }
        String at = "port " + number + " ";
        String bleed = matcher.group(4);
        String discharge = matcher.group(5);
        return new Port(
                number,
                si(at + "current", matcher.group(1), Measure.CURRENT),
                si(at + "power", matcher.group(2), Measure.POWER),
                Integer.parseInt(matcher.group(3)),
                bleed == null ? null : (Double) si(at + "bleed current", bleed, Measure.CURRENT),
                discharge == null ? null : (Double) si(at + "discharge power", discharge, Measure.POWER));
    }

    static String write(Port port) {
        return compact(port.maxAmps(), Measure.CURRENT)
                + " " + compact(port.maxWatts(), Measure.POWER)
                + " " + port.maxCells() + "S"
                + named(" bleed ", port.bleedAmps(), Measure.CURRENT)
                + named(" discharge ", port.dischargeWatts(), Measure.POWER);
    }

    private static double si(String what, String typed, Measure measure) {
        return QuantityText.si("ports", what, typed, measure, null);
    }

    private static String named(String name, @Nullable Double si, Measure measure) {
        return si == null ? "" : name + compact(si, measure);
    }

    private static String compact(double si, Measure measure) {
        return QuantityText.write(si, measure).replace(" ", "");
    }
}
