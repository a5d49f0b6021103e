package fettle.desk.glossary;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What words mean here. */
public final class Glossary {
    private static final List<Term> TERMS = List.of(
            new Term(
                    "balance lead",
                    "the thin lead with a wire from every joint between cells: each cell is read at it"),
            new Term("BEC", "the part that feeds receiver and servos from the flight or drive pack"),
            new Term(
                    "beyond a limit",
                    "how often the record shows the pack emptier, fuller or warmer than its rules allow"),
            new Term("C rating", "a current as a multiple of capacity: 2C of 5000 mAh is 10 A"),
            new Term("capacity", "the charge a pack gives from full to empty; less than its label as it ages"),
            new Term("centre", "the pulse at which a servo rests in the middle of its travel, usually 1500 µs"),
            new Term("charge now", "how full the weakest cell is: the pack is empty when that cell is"),
            new Term("control horn", "the lever on a surface that the pushrod moves"),
            new Term("cut-off", "the volts at which a speed controller takes power away to spare the pack"),
            new Term(
                    "cycles left",
                    "full charges and discharges until the trend reaches the limit at which a pack retires"),
            new Term("differential", "more travel up than down, or the other way about"),
            new Term("end point", "the pulse at which a servo is told to stop on one side"),
            new Term("ESC", "the speed controller between pack and motor"),
            new Term(
                    "holds", "what the pack gives from full to empty, measured where there is something to measure by"),
            new Term("imbalance", "how far the cells of a pack stand apart, in volts or in charge"),
            new Term("internal resistance", "what makes volts fall under load; it rises with age and cold"),
            new Term("kept full", "how long the pack has stood near its charge limit, which ages it"),
            new Term("pushrod", "the rod between servo arm and control horn"),
            new Term("put-back", "the charge a charger says it returned: what the run before took out"),
            new Term("reserve", "charge left in the pack on purpose, for a safe landing and a longer life"),
            new Term("rest", "time without load or charge; volts settle and can be read as charge"),
            new Term("retires", "when capacity or resistance reaches the limit at which the pack is taken out of use"),
            new Term("sag", "the fall of volts under load"),
            new Term("servo arm", "the lever on a servo's shaft"),
            new Term("standing", "a pack's overall state, from the worst of its findings"),
            new Term("storage voltage", "the volts at which a pack ages least while it waits"),
            new Term("sweep", "a servo's current and angle taken over its pulses, to find where it binds"),
            new Term("throw", "how far a surface moves, in degrees or at its trailing edge"),
            new Term("timer", "the minutes after which to land or stop with the reserve still in the pack"),
            new Term("trace", "a log of volts, current and temperature over time"),
            new Term("± ", "one standard deviation: about two in three times the truth lies within"));

    private Glossary() {}

    /** One word and what it means. */
    public record Term(String word, String meaning) {}

    /** All of them, by word. */
    public static List<Term> all() {
        return TERMS;
    }

    /** The term that a name is about: the longest word in it. */
    public static Optional<Term> of(String name) {
        String said = name.toLowerCase(Locale.ROOT);
        return TERMS.stream()
                .filter(term -> said.matches(
                        ".*\\b" + term.word().toLowerCase(Locale.ROOT).strip() + "\\b.*"))
                .max(Comparator.comparingInt(term -> term.word().length()));
    }

    /** An id of the explanation of a name, one for each name on a page. */
    public static String id(String name) {
        return "about-" + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
