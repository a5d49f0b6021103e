package fettle.engine.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as written, with whatever stands behind it.
 *
 * @param number the number as written: optional sign, decimal point or decimal comma
 * @param unit what follows it, spaces taken off; empty if nothing does
 */
public record Figure(String number, String unit) {
    /** Most characters a written quantity can have; anything longer is a slip of the keyboard or a paste. */
    public static final int LONGEST = 40;

    private static final Pattern WRITTEN =
            Pattern.compile("([-+−]?(?:\\d{1,12}(?:[.,]\\d{1,12})?|[.,]\\d{1,12}))(?!\\d|[.,])\\s*(.*)");

    private static final Pattern THOUSANDS = Pattern.compile("[-+−]?[1-9]\\d{0,2},\\d{3}");

    /** Splits {@code 21 °C} or {@code 3840mV}; empty if it does not begin with a number or is longer than allowed. */
    public static Optional<Figure> of(String written) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        return written.length() <= LONGEST && matcher.matches()
                ? Optional.of(new Figure(matcher.group(1), matcher.group(2).strip()))
                : Optional.empty();
    }

    /** The number; always finite. */
    public double value() {
        return Double.parseDouble(number.replace(',', '.').replace('−', '-'));
    }

    /** True for {@code 5,000}: a decimal comma to some, a thousands comma to others. */
    public boolean mayHaveThousandsComma() {
        return THOUSANDS.matcher(number).matches();
    }
}
