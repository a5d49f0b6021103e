package fettle.desk.setup;

import fettle.engine.control.sweep.UsableSpan;
import fettle.engine.units.TradeUnit;

/**
 * The span that may be used, bracketed in every panel.
 *
 * @param from lower end, in the frame's units
 * @param to upper end
 * @param label what it is, with its figures
 */
public record Bracket(String from, String to, String label) {
    /**
     * The usable span of a sweep in a frame.
     *
     * @param lowMicros lowest pulse of the frame
     * @param highMicros highest pulse of the frame
     */
    static Bracket of(UsableSpan span, double lowMicros, double highMicros) {
        double lowest = TradeUnit.MICROSECOND.fromSi(span.lowestSeconds());
        double highest = TradeUnit.MICROSECOND.fromSi(span.highestSeconds());
        return new Bracket(
                Panel.plain(Panel.across(Math.max(lowMicros, lowest), lowMicros, highMicros)),
                Panel.plain(Panel.across(Math.min(highMicros, highest), lowMicros, highMicros)),
                "usable by the sweep: " + Math.round(lowest) + " to " + Math.round(highest) + " µs");
    }
}
