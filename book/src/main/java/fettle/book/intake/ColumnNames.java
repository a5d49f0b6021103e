package fettle.book.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells from a heading what a column is: its words in English or German, its unit in brackets, behind a slash, behind an
 * underscore or in a row of units, and the labels of the open battery data format.
 */
final class ColumnNames {
    private static final Pattern BRACKETS = Pattern.compile("^(.*?)\\s*[(\\[{]\\s*([^)\\]}]*)\\s*[)\\]}]\\s*$");
    private static final Pattern SLASH = Pattern.compile("^(.*\\S)\\s*/\\s*(\\S+)$");
    private static final Pattern TAIL = Pattern.compile("^(.+)[ _]([^ _]+)$");
    private static final Pattern CELL = Pattern.compile(
            "^(?:(?:(?:pack|battery|batt?|akku) ?)?[a-z0-9] (?=cell|zelle))?(?:cell|zelle|c|vc|u|v|cellvolts?|cellvoltage|cellv|zellspannung)[ _#.-]*(\\d{1,2})(?:[ _-]*(?:volts?|voltage|spannung|v|u))?$");

    private static final List<String> NOT_OF_THE_PACK = List.of(
            "bec",
            "receiver",
            "rx",
            "servo",
            "input",
            "supply",
            "motor",
            "set",
            "target",
            "limit",
            "min",
            "max",
            "mean",
            "average",
            "avg",
            "ambient",
            "umgebung",
            "esc",
            "throttle",
            "cutoff",
            "rise",
            "board",
            "air",
            "fet",
            "sensor2");

    private ColumnNames() {}

    /** A heading parted into its words and its unit. */
    record Heading(String words, Optional<ColumnUnit> unit) {}

    static Column recognise(int index, String heading, String unitBelow) {
        Heading parted = part(heading);
        Optional<ColumnUnit> unit = unitBelow.isBlank()
                ? parted.unit()
                : ColumnUnit.written(bare(unitBelow)).or(parted::unit);
        String words = parted.words().toLowerCase(Locale.ROOT).strip();
        String name = heading.isBlank() ? "column " + (index + 1) : heading.strip();
        return role(new Column(index, name, ColumnRole.UNUSED, 0, ColumnUnit.NONE, true), words, unit);
    }

    private static Column role(Column column, String words, Optional<ColumnUnit> unit) {
        if (words.matches("unix[ _]?time.*|epoch.*")) {
            boolean millis = unit.filter(ColumnUnit.MILLISECOND::equals).isPresent();
            return column.as(ColumnRole.WALL_CLOCK, 0, millis ? ColumnUnit.UNIX_MILLISECOND : ColumnUnit.UNIX_SECOND);
        }
        if (words.matches("date|datum|day")) {
            return column.as(ColumnRole.DATE, 0, ColumnUnit.NONE);
        }
        if (isTime(words)) {
            return guess(column, ColumnRole.TIME, 0, unit.filter(ColumnUnit::isTime));
        }
        Matcher cell = CELL.matcher(words);
        if (cell.matches() && unit.map(ColumnNames::isVolts).orElse(!words.matches("[uv]\\d+"))) {
            return guess(column, ColumnRole.CELL_VOLTS, Integer.parseInt(cell.group(1)), unit);
        }
        if (NOT_OF_THE_PACK.stream().anyMatch(other -> words.matches(".*(^|[^a-z])" + other + "([^a-z].*|$)"))) {
            return column;
        }
        if (has(words, "volt|volts|voltage|spannung|vbat|vbatt|vpack|ubat|battv|u|v")
                && unit.map(ColumnNames::isVolts).orElse(true)) {
            return guess(column, ColumnRole.PACK_VOLTS, 0, unit);
        }
        if (has(words, "current|amps|amp|amperes|strom|curr|ibat|i|a")
                && unit.map(ColumnNames::isAmps).orElse(true)) {
            return guess(column, ColumnRole.AMPS, 0, unit);
        }
        if (has(words, "temp|temperature|temperatur|t1|tc")
                && unit.map(ColumnNames::isWarmth).orElse(true)) {
            return guess(column, ColumnRole.TEMPERATURE, 0, unit);
        }
        return byUnit(column, words, unit);
    }

    /** A heading that says only "battery" or nothing but a unit. */
    private static Column byUnit(Column column, String words, Optional<ColumnUnit> unit) {
        if (unit.isPresent() && words.matches("|(?:batt?|battery|akku|pack|flight pack)? ?[a-z0-9]?")) {
            if (isVolts(unit.get())) {
                return column.as(ColumnRole.PACK_VOLTS, 0, unit.get());
            }
            if (isAmps(unit.get())) {
                return column.as(ColumnRole.AMPS, 0, unit.get());
            }
            if (isWarmth(unit.get())) {
                return column.as(ColumnRole.TEMPERATURE, 0, unit.get());
            }
            if (unit.get().isTime()) {
                return column.as(ColumnRole.TIME, 0, unit.get());
            }
        }
        return column;
    }

    private static Column guess(Column column, ColumnRole role, int cell, Optional<ColumnUnit> unit) {
        return new Column(column.index(), column.name(), role, cell, unit.orElse(ColumnUnit.NONE), unit.isPresent());
    }

    private static boolean isTime(String words) {
        return words.matches(
                "time|t|zeit|timestamp|time ?stamp|elapsed.*|test[ _]time.*|seconds|sec|millis|ms|clock|uhrzeit|laufzeit"
                        + "|date[ _/-]?time|datetime|date and time|run ?time|log ?time|total ?time");
    }

    private static boolean has(String words, String any) {
        return words.matches("(?:.*[^a-z])?(?:" + any + ")(?:[^a-z].*)?");
    }

    private static boolean isVolts(ColumnUnit unit) {
        return unit == ColumnUnit.VOLT || unit == ColumnUnit.MILLIVOLT;
    }

    private static boolean isAmps(ColumnUnit unit) {
        return unit == ColumnUnit.AMPERE || unit == ColumnUnit.MILLIAMPERE;
    }

    private static boolean isWarmth(ColumnUnit unit) {
        return unit == ColumnUnit.CELSIUS || unit == ColumnUnit.FAHRENHEIT || unit == ColumnUnit.KELVIN;
    }

    static Heading part(String heading) {
        String text = heading.strip();
        for (Pattern form : List.of(BRACKETS, SLASH, TAIL)) {
            Matcher parts = form.matcher(text);
            if (parts.matches()) {
                Optional<ColumnUnit> unit = ColumnUnit.written(parts.group(2));
                if (unit.isPresent() || form == BRACKETS) {
                    return new Heading(parts.group(1).replace('_', ' '), unit);
                }
            }
        }
        return new Heading(text.replace('_', ' '), Optional.empty());
    }

    /** A unit as a row of units writes it: {@code [V]}, {@code (mA)}, {@code V}. */
    static String bare(String unit) {
        return unit.strip().replaceAll("^[(\\[{]|[)\\]}]$", "").strip();
    }
}
