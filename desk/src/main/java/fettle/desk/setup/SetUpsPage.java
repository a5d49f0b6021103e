package fettle.desk.setup;

import fettle.desk.frame.Back;
import fettle.engine.units.Counted;
import java.util.List;

/**
 * All set-ups.
 *
 * @param craft craft in use with their latest sheet
 */
public record SetUpsPage(List<Line> craft) {
    static final String POWER = "/setups/power?name=";

    /** Where a craft's sheet is. */
    static String href(String craft) {
        return "/setups/craft?name=" + Back.encode(craft);
    }

    /** Where a surface of a craft's sheet is worked out. */
    static String surfaceHref(String craft, String surface) {
        return "/setups/surface?name=" + Back.encode(craft) + "&part=" + Back.encode(surface);
    }

    /** Where the linkage of a craft's surface is drawn. */
    static String linkageHref(String craft, String surface) {
        return "/setups/linkage?craft=" + Back.encode(craft) + "&surface=" + Back.encode(surface);
    }

    /**
     * One craft.
     *
     * @param name its name
     * @param latest date of its latest sheet; empty if it has none
     * @param surfaces how many surfaces are on it
     * @param sweeps how many sweeps are kept
     */
    public record Line(String name, String latest, int surfaces, int sweeps) {
        public String onIt() {
            return Counted.of(surfaces, "surface");
        }

        public String swept() {
            return Counted.of(sweeps, "sweep");
        }

        public String href() {
            return SetUpsPage.href(name);
        }
    }
}
