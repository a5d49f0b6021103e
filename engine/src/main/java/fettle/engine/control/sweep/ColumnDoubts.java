package fettle.engine.control.sweep;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Whether columns are what they are taken for; asks where figures speak against it, and never guesses a close call. */
public final class ColumnDoubts {
    private static final double LOWEST_MICROS = 500;
    private static final double HIGHEST_MICROS = 2500;

    /** Share of figures that must be pulses. */
    private static final double PULSES = 0.95;

    /** More than any servo's stall current of the craft in question [A]; common practice, no source. */
    private static final double MOST_AMPS = 20;

    /** A sweep whose largest current is below this would not even run its own electronics [mA]; common practice. */
    private static final double LEAST_MILLIAMPS = 5;

    private ColumnDoubts() {}

    /** Whether figures can be pulses in µs that span some travel. */
    public static boolean pulses(double[] figures) {
        long inside = Arrays.stream(figures)
                .filter(figure -> figure >= LOWEST_MICROS && figure <= HIGHEST_MICROS)
                .count();
        return inside >= PULSES * figures.length && most(figures) - least(figures) >= 100;
    }

    /** What speaks against a column of pulses [µs], given the column of current; empty if nothing does. */
    public static Optional<String> pulseDoubt(double[] pulses, double[] currents) {
        if (pulses(pulses)) {
            return Optional.empty();
        }
        String range = range(pulses);
        if (pulses(currents)) {
            return Optional.of("pulses run " + range + " and currents " + range(currents)
                    + ": the two columns look swapped. Name them the other way round.");
        }
        if (least(pulses) >= LOWEST_MICROS / 1000 && most(pulses) <= HIGHEST_MICROS / 1000) {
            return Optional.of("pulses run " + range + ": that looks like milliseconds. State ms as their unit.");
        }
        return Optional.of("pulses run " + range
                + "; expected 500 to 2500 µs over 100 µs or more. Name the column of the" + " pulses.");
    }

    /** The unit of a column of current that states none, if only one is possible. */
    public static Optional<CurrentUnit> unit(double[] figures) {
        double most = most(figures);
        return most > MOST_AMPS
                ? Optional.of(CurrentUnit.MILLIAMPERE)
                : most < LEAST_MILLIAMPS ? Optional.of(CurrentUnit.AMPERE) : Optional.empty();
    }

    /** What speaks against a unit that is stated; empty if nothing does. */
    public static Optional<String> unitDoubt(double[] figures, CurrentUnit stated) {
        double most = most(figures);
        if (stated == CurrentUnit.AMPERE && most > MOST_AMPS) {
            return Optional.of("currents run " + range(figures)
                    + " and are said to be in A, more than a servo takes: are they in mA? State their unit.");
        }
        if (stated == CurrentUnit.MILLIAMPERE && most < LEAST_MILLIAMPS) {
            return Optional.of("currents run " + range(figures)
                    + " and are said to be in mA, less than a servo takes at rest: are they in A? State their unit.");
        }
        return Optional.empty();
    }

    /** The question where neither unit can be ruled out. */
    public static String unitQuestion(double[] figures) {
        return "currents run " + range(figures) + " without a unit: mA or A? State it.";
    }

    private static String range(double[] figures) {
        return String.format(Locale.ROOT, "%s to %s", plain(least(figures)), plain(most(figures)));
    }

    private static String plain(double figure) {
        return String.format(Locale.ROOT, "%.3f", figure).replaceAll("\\.?0+$", "");
    }

    private static double least(double[] figures) {
        return Arrays.stream(figures).min().orElse(Double.NaN);
    }

    private static double most(double[] figures) {
        return Arrays.stream(figures).max().orElse(Double.NaN);
    }
}
