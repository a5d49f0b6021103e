package fettle.book.intake;

import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The units and stamp formats a column of a log can have, with the ways they are written. */
public enum ColumnUnit {
    VOLT(TradeUnit.VOLT, "V", "volt", "volts"),
    MILLIVOLT(TradeUnit.MILLIVOLT, "mV", "millivolt", "millivolts"),
    AMPERE(TradeUnit.AMPERE, "A", "amp", "amps", "ampere"),
    MILLIAMPERE(TradeUnit.MILLIAMPERE, "mA", "milliamp", "milliamps"),
    CELSIUS(TradeUnit.CELSIUS, "°C", "C", "degC", "celsius", "ºC", "deg C", "grad C"),
    FAHRENHEIT(TradeUnit.FAHRENHEIT, "°F", "F", "degF", "fahrenheit", "ºF", "deg F"),
    KELVIN(1, "K", "kelvin"),
    SECOND(TradeUnit.SECOND, "s", "sec", "secs", "second", "seconds", "sek"),
    MILLISECOND(1e-3, "ms", "msec", "millis", "milliseconds", "millisecond"),
    MICROSECOND(TradeUnit.MICROSECOND, "µs", "us", "μs", "usec", "micros", "microseconds"),
    MINUTE(TradeUnit.MINUTE, "min", "minute", "minutes"),
    HOUR(TradeUnit.HOUR, "h", "hour", "hours", "hr"),
    UNIX_SECOND(1, "unix s"),
    UNIX_MILLISECOND(1e-3, "unix ms"),
    CLOCK(1, "hh:mm:ss", "mm:ss"),
    DATE_TIME(1, "yyyy-mm-dd hh:mm:ss", "iso"),
    DATE_TIME_DAY_FIRST(1, "dd.mm.yyyy hh:mm:ss"),
    DATE_TIME_MONTH_FIRST(1, "mm/dd/yyyy hh:mm:ss"),
    NONE(1, "");

    private static final List<ColumnUnit> LENGTHS = List.of(SECOND, MILLISECOND, MICROSECOND, MINUTE, HOUR);

    private final double factor;
    private final double offset;
    private final List<String> spellings;

    ColumnUnit(TradeUnit unit, String... spellings) {
        this.offset = unit.toSi(0);
        this.factor = unit.toSi(1) - offset;
        this.spellings = List.of(spellings);
    }

    ColumnUnit(double factor, String... spellings) {
        this.factor = factor;
        this.offset = 0;
        this.spellings = List.of(spellings);
    }

    /** A figure in this unit as SI: volts, amps, kelvins or seconds. */
    public double toSi(double figure) {
        return figure * factor + offset;
    }

    public String symbol() {
        return spellings.get(0);
    }

    /** Whether its fields are stamps to be taken apart, not figures. */
    boolean isStamp() {
        return this == CLOCK || isDated();
    }

    /** Whether its fields hold a calendar date. */
    boolean isDated() {
        return this == DATE_TIME || this == DATE_TIME_DAY_FIRST || this == DATE_TIME_MONTH_FIRST;
    }

    boolean isUnix() {
        return this == UNIX_SECOND || this == UNIX_MILLISECOND;
    }

    boolean isTime() {
        return LENGTHS.contains(this) || isStamp() || isUnix();
    }

    /** The unit written so: exactly where case tells units apart (mV, MV), otherwise in any case. */
    public static Optional<ColumnUnit> written(String text) {
        String trimmed = text.strip();
        return Arrays.stream(values())
                .filter(unit -> unit != NONE)
                .filter(unit -> unit.spellings.stream()
                        .anyMatch(spelling -> spelling.equals(trimmed)
                                || (spelling.length() > 1 || trimmed.equals(trimmed.toLowerCase(Locale.ROOT)))
                                        && spelling.equalsIgnoreCase(trimmed)))
                .findFirst();
    }
}
