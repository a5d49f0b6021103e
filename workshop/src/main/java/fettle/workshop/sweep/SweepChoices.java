package fettle.workshop.sweep;

import fettle.engine.control.sweep.CurrentUnit;
import fettle.engine.units.InputException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a person states about a file.
 *
 * @param pulse heading or number of the column of pulses; empty to find it
 * @param current heading or number of the column of current; empty to find it
 * @param angle heading or number of the column of angles; empty to find it, or {@code none}
 * @param pulseUnit {@code µs} or {@code ms}; empty to take it from the heading
 * @param currentUnit {@code mA} or {@code A}; empty to take it from the heading
 * @param idleAmps current at rest [A]; {@code null} if it was not read
 * @param stallAmps stall current [A]; {@code null} if not known
 */
public record SweepChoices(
        String pulse,
        String current,
        String angle,
        String pulseUnit,
        String currentUnit,
        @Nullable Double idleAmps,
        @Nullable Double stallAmps) {
    public static final SweepChoices NONE = new SweepChoices("", "", "", "", "", null, null);

    /** Unit of current as written; {@code null} if it is neither. */
    static @Nullable CurrentUnit current(String written) {
        return switch (written.strip().toLowerCase(Locale.ROOT)) {
            case "ma", "milliamps", "milliamp" -> CurrentUnit.MILLIAMPERE;
            case "a", "amp", "amps", "ampere" -> CurrentUnit.AMPERE;
            default -> null;
        };
    }

    /** How many µs one unit of the pulses is, as written; {@code null} if it is neither µs nor ms. */
    static @Nullable Double micros(String written) {
        return switch (written.strip().toLowerCase(Locale.ROOT)) {
            case "µs", "μs", "us", "microseconds", "usec" -> 1.0;
            case "ms", "milliseconds", "msec" -> 1000.0;
            default -> null;
        };
    }

    @Nullable
    CurrentUnit statedCurrent() {
        CurrentUnit unit = current(currentUnit);
        if (unit == null && !currentUnit.isBlank()) {
            throw new InputException("current-unit", "unit of current is \"" + currentUnit + "\"; expected mA or A.");
        }
        return unit;
    }

    @Nullable
    Double statedMicros() {
        Double factor = micros(pulseUnit);
        if (factor == null && !pulseUnit.isBlank()) {
            throw new InputException("pulse-unit", "unit of pulses is \"" + pulseUnit + "\"; expected µs or ms.");
        }
        return factor;
    }
}
