package fettle.engine.units;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Quantities as people write them: read to SI, and written back so that reading gives the same number again. */
public final class QuantityText {
    private static final int MOST_DECIMALS = 9;

    /** Units in which thousandths mean nothing, so that {@code 5,000} is more likely five thousand than five. */
    private static final Set<TradeUnit> SMALL = EnumSet.of(
            TradeUnit.MILLIAMPERE_HOUR,
            TradeUnit.MILLIVOLT,
            TradeUnit.MILLIAMPERE,
            TradeUnit.MILLIOHM,
            TradeUnit.GRAM,
            TradeUnit.WATT,
            TradeUnit.WATT_HOUR,
            TradeUnit.SECOND,
            TradeUnit.MINUTE);

    private QuantityText() {}

    /**
     * Reads a quantity, e.g. {@code 3,84 V}, {@code 21C}, {@code 1h30}.
     *
     * @param field key of the field, for the fault
     * @param what what it is, for the sentence, e.g. {@code capacity}
     * @param written as typed
     * @param measure what it must measure
     * @param bare unit of a number without one; {@code null} if a unit must be written
     * @return its value, SI, always finite
     * @throws InputException if it cannot be read, with the reason and the mend
     */
    public static double si(String field, String what, String written, Measure measure, @Nullable TradeUnit bare) {
        OptionalDouble compound =
                measure == Measure.DURATION ? CompoundDuration.seconds(written) : OptionalDouble.empty();
        if (compound.isPresent()) {
            return compound.getAsDouble();
        }
        Figure figure =
                Figure.of(written).orElseThrow(() -> new InputException(field, notANumber(what, written, measure)));
        return si(field, what, figure, measure, bare);
    }

    /** The same for a number and unit split already. */
    public static double si(String field, String what, Figure figure, Measure measure, @Nullable TradeUnit bare) {
        TradeUnit unit = unit(field, what, figure, measure, bare);
        if (SMALL.contains(unit) && figure.mayHaveThousandsComma()) {
            String together = figure.number().replace(",", "");
            String decimal = figure.number().replace(',', '.').replaceAll("\\.?0+$", "");
            throw new InputException(
                    field,
                    what + " is \"" + figure.number() + "\", which can be read two ways. Write " + together + " "
                            + unit.symbol() + " or " + decimal + " " + unit.symbol() + ".");
        }
        return unit.toSi(figure.value());
    }

    /** The same for a quantity that may be left out: {@code null} where nothing is written. */
    public static @Nullable Double siOrNull(
            String field, String what, String written, Measure measure, @Nullable TradeUnit bare) {
        return written.isBlank() ? null : Double.valueOf(si(field, what, written, measure, bare));
    }

    /** Writes the figure alone, in one unit, with the fewest decimals that read back exactly. */
    public static String writeBare(double si, TradeUnit unit) {
        String written = write(si, unit);
        return written.substring(0, written.length() - unit.symbol().length()).strip();
    }

    /** True if it is a number with a unit of this measure. */
    public static boolean measures(String written, Measure measure) {
        boolean compound =
                measure == Measure.DURATION && CompoundDuration.seconds(written).isPresent();
        return compound
                || Figure.of(written)
                        .flatMap(figure -> measure.unit(figure.unit()))
                        .isPresent();
    }

    /** Writes a quantity in the first unit of its measure, and with the fewest decimals, that read back exactly. */
    public static String write(double si, Measure measure) {
        return measure.units().stream()
                .flatMap(unit -> exactly(si, unit).stream())
                .findFirst()
                .orElseGet(() -> figure(si, measure.units().get(0), MOST_DECIMALS));
    }

    /** Writes a quantity in one unit, with the fewest decimals that read back exactly. */
    public static String write(double si, TradeUnit unit) {
        return exactly(si, unit).orElseGet(() -> figure(si, unit, MOST_DECIMALS));
    }

    private static Optional<String> exactly(double si, TradeUnit unit) {
        for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
            String written = figure(si, unit, decimals);
            if (unit.toSi(Figure.of(written).map(Figure::value).orElse(Double.NaN)) == si) {
                return Optional.of(written);
            }
        }
        return Optional.empty();
    }

    private static String figure(double si, TradeUnit unit, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f %s", unit.fromSi(si), unit.symbol());
    }

    private static TradeUnit unit(String field, String what, Figure figure, Measure measure, @Nullable TradeUnit bare) {
        if (!figure.unit().isEmpty()) {
            return measure.unit(figure.unit())
                    .orElseThrow(() -> new InputException(
                            field,
                            what + " is \"" + figure.number() + " " + figure.unit() + "\"; \"" + figure.unit()
                                    + "\" is not a unit of " + measure.noun() + ". Write it in " + measure.choices()
                                    + "."));
        }
        if (bare == null) {
            throw new InputException(
                    field,
                    what + " is \"" + figure.number() + "\", which has no unit. Write "
                            + measure.units().stream()
                                    .map(unit -> figure.number() + " " + unit.symbol())
                                    .collect(Collectors.joining(" or "))
                            + ".");
        }
        return bare;
    }

    private static String notANumber(String what, String written, Measure measure) {
        String shown = written.length() > Figure.LONGEST
                ? written.length() + " characters long, at most " + Figure.LONGEST + " can be read"
                : "\"" + written.strip() + "\", which is not one number with a unit";
        return what + " is " + shown + ". Write a number in " + measure.choices() + ".";
    }
}
