package fettle.workshop;

import static fettle.workshop.TypedFields.written;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.Figure;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A pack as typed by a person: the one place where typed words become a {@link Pack}, for desk and command line.
 *
 * <p>Empty text means not stated. Capacity takes {@code 5000}, {@code 5000 mAh} or {@code 5 Ah}; ratings take
 * {@code 5C} or {@code 10A}; mass takes {@code 540 g} or {@code 19 oz}; cells take {@code 4S}, {@code 6S2P} or {@code 4};
 * identity takes {@code confirmed} or {@code unconfirmed}; limits take what the maker states, one a line or with
 * semicolons: {@code charge-limit 4.15 V; storage-time 48 h}.
 */
public record PackForm(
        String tag,
        String chemistry,
        String cells,
        String capacity,
        String chargeRating,
        String dischargeRating,
        String mass,
        String connector,
        String bought,
        String keeper,
        String identity,
        String limits,
        String note) {
    private static final Map<String, String> FIELD_OF =
            Map.of("cellsInSeries", "cells", "cellsInParallel", "cells", "ratedCapacity", "capacity");

    /** Stands in for a capacity that cannot be read, only while the other fields are checked. */
    private static final double ANY_COULOMBS = TradeUnit.AMPERE_HOUR.toSi(1);

    /** The pack, or {@link InputException} with every fault, each at its field's name here. */
    public Pack toPack() {
        TypedFields fields = new TypedFields();
        Chemistry known = fields.read("chemistry", () -> Chemistry.parse(chemistry), Chemistry.LIPO);
        CellsText arrangement = fields.read("cells", () -> CellsText.parse(cells), new CellsText(1, 1));
        double coulombs = fields.needed(
                "capacity", "capacity", capacity, Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR, ANY_COULOMBS);
        Double chargeAmps = rating(fields, "chargeRating", "charge rating", chargeRating, coulombs);
        Double dischargeAmps = rating(fields, "dischargeRating", "discharge rating", dischargeRating, coulombs);
        Double kilograms = fields.optional("mass", "mass", mass, Measure.MASS, TradeUnit.GRAM);
        LocalDate day = fields.<@Nullable LocalDate>read("bought", this::boughtOn, null);
        Pack.Identity identified = identified(fields);
        List<RuleOverride> makersLimits =
                fields.read("limits", () -> MakersLimitsText.parse(limits, known), List.<RuleOverride>of());
        return fields.make(
                () -> new Pack(
                        tag.strip(),
                        known,
                        arrangement.inSeries(),
                        arrangement.inParallel(),
                        coulombs,
                        chargeAmps,
                        dischargeAmps,
                        kilograms,
                        connector.strip(),
                        day,
                        keeper.strip(),
                        identified,
                        makersLimits,
                        note.strip()),
                FIELD_OF);
    }

    /** A pack as a person would type it. */
    public static PackForm of(Pack pack) {
        LocalDate day = pack.bought();
        return new PackForm(
                pack.tag(),
                pack.chemistry().label(),
                pack.arrangement(),
                written(pack.ratedCapacityCoulombs(), Measure.CHARGE),
                written(pack.chargeRatingAmps(), Measure.CURRENT),
                written(pack.dischargeRatingAmps(), Measure.CURRENT),
                written(pack.massKilograms(), Measure.MASS),
                pack.connector(),
                day == null ? "" : day.toString(),
                pack.keeper(),
                label(pack.identity()),
                MakersLimitsText.write(pack.makersLimits()),
                pack.note());
    }

    /** Amps as written, or those of a C rating: C × capacity per hour. */
    private static @Nullable Double rating(
            TypedFields fields, String field, String what, String typed, double coulombs) {
        boolean asRate = Figure.of(typed)
                .flatMap(figure -> Measure.RATE.unit(figure.unit()))
                .isPresent();
        if (!asRate) {
            return typed.isBlank() ? null : fields.<@Nullable Double>read(field, () -> amps(field, what, typed), null);
        }
        Double perHour = fields.optional(field, what, typed, Measure.RATE, TradeUnit.C_RATE);
        return perHour == null ? null : (Double) (perHour * TradeUnit.AMPERE_HOUR.fromSi(coulombs));
    }

    private static double amps(String field, String what, String typed) {
        try {
            return QuantityText.si(field, what, typed, Measure.CURRENT, null);
        } catch (InputException refused) {
            throw new InputException(
                    field, what + " is \"" + typed.strip() + "\"; expected a C rating or amps, e.g. 5C or 10A.");
        }
    }

    private @Nullable LocalDate boughtOn() {
        try {
            return bought.isBlank() ? null : LocalDate.parse(bought.strip());
        } catch (DateTimeParseException notADay) {
            throw new InputException(
                    "bought", "bought is \"" + bought.strip() + "\"; expected a day of the calendar, e.g. 2026-03-14.");
        }
    }

    private Pack.Identity identified(TypedFields fields) {
        return identity.isBlank()
                ? Pack.Identity.UNCONFIRMED
                : fields.choice("identity", "identity", identity, Pack.Identity.values(), PackForm::label);
    }

    private static String label(Pack.Identity identity) {
        return identity.name().toLowerCase(Locale.ROOT);
    }
}
