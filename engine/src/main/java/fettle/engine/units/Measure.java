package fettle.engine.units;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a figure measures, with the units people write for it and how they spell them. Case never matters. */
public enum Measure {
    VOLTAGE("voltage", Map.of(TradeUnit.VOLT, "v volt volts", TradeUnit.MILLIVOLT, "mv millivolt millivolts")),
    CHARGE("charge", Map.of(TradeUnit.MILLIAMPERE_HOUR, "mah", TradeUnit.AMPERE_HOUR, "ah")),
    ENERGY("energy", Map.of(TradeUnit.WATT_HOUR, "wh")),
    CURRENT("current", Map.of(TradeUnit.AMPERE, "a amp amps", TradeUnit.MILLIAMPERE, "ma")),
    POWER("power", Map.of(TradeUnit.WATT, "w watt watts")),
    RATE("rate", Map.of(TradeUnit.C_RATE, "c")),
    RESISTANCE(
            "resistance", Map.of(TradeUnit.MILLIOHM, "mω mohm mohms milliohm milliohms", TradeUnit.OHM, "ω ohm ohms")),
    TEMPERATURE("temperature", Map.of(TradeUnit.CELSIUS, "c ℃ degc", TradeUnit.FAHRENHEIT, "f ℉ degf")),
    DURATION(
            "time",
            Map.of(
                    TradeUnit.SECOND,
                    "s sec secs second seconds",
                    TradeUnit.MINUTE,
                    "min m mins minute minutes",
                    TradeUnit.HOUR,
                    "h hr hrs hour hours",
                    TradeUnit.DAY,
                    "d day days")),
    FRACTION("share", Map.of(TradeUnit.PERCENT, "% percent")),
    MASS("mass", Map.of(TradeUnit.GRAM, "g gram grams", TradeUnit.KILOGRAM, "kg", TradeUnit.OUNCE, "oz ounce ounces")),
    FREQUENCY("frequency", Map.of(TradeUnit.HERTZ, "hz hertz")),
    PULSE("pulse width", Map.of(TradeUnit.MICROSECOND, "µs μs us")),
    /** The degree sign is taken off before looking up, so nothing is left of it: the empty spelling before the blank. */
    ANGLE("angle", Map.of(TradeUnit.DEGREE, " deg degree degrees")),
    LENGTH(
            "length",
            Map.of(
                    TradeUnit.MILLIMETRE,
                    "mm",
                    TradeUnit.METRE,
                    "m",
                    TradeUnit.INCH,
                    "in inch inches",
                    TradeUnit.FOOT,
                    "ft")),
    SPEED(
            "speed",
            Map.of(
                    TradeUnit.METRE_PER_SECOND,
                    "m/s",
                    TradeUnit.KILOMETRE_PER_HOUR,
                    "km/h kmh",
                    TradeUnit.MILE_PER_HOUR,
                    "mph",
                    TradeUnit.KNOT,
                    "kn knot knots")),
    TORQUE(
            "torque",
            Map.of(
                    TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
                    "kg·cm kgcm kg-cm kgf·cm kgfcm",
                    TradeUnit.OUNCE_FORCE_INCH,
                    "oz·in ozin oz-in ozf·in",
                    TradeUnit.NEWTON_METRE,
                    "n·m nm n-m"));

    /** Signs written for a degree: the sign itself, the masculine ordinal and the ring above. */
    private static final String DEGREE_SIGNS = "[°º˚]\\s*";

    private final String noun;
    private final Map<String, TradeUnit> spellings = new LinkedHashMap<>();
    private final List<TradeUnit> units;

    Measure(String noun, Map<TradeUnit, String> spelled) {
        this.noun = noun;
        this.units = spelled.keySet().stream().sorted().toList();
        units.forEach(
                unit -> Arrays.stream(spelled.get(unit).split(" ")).forEach(spelling -> spellings.put(spelling, unit)));
    }

    /** What a unit measures. */
    public static Measure of(TradeUnit unit) {
        return Arrays.stream(values())
                .filter(measure -> measure.units.contains(unit))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing typed is measured in " + unit));
    }

    /** What it is called in a sentence, e.g. {@code voltage}. */
    public String noun() {
        return noun;
    }

    /** Its units, the usual one first. */
    public List<TradeUnit> units() {
        return units;
    }

    /** The unit a person wrote, e.g. {@code mOhm}, {@code °C}, {@code min}; empty if it is none of this measure. */
    public Optional<TradeUnit> unit(String written) {
        String plain = written.strip().replaceAll(DEGREE_SIGNS, "").toLowerCase(Locale.ROOT);
        return Optional.ofNullable(spellings.get(plain));
    }

    /** Its units as a sentence lists them: {@code V or mV}. */
    public String choices() {
        return units.stream().map(TradeUnit::symbol).collect(Collectors.joining(" or "));
    }
}
