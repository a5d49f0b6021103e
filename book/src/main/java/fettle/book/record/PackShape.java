package fettle.book.record;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Packs with their makers' limits. */
public final class PackShape implements Shape<Pack> {
    private static final String LIMITS = "pack_makers_limit";

    @Override
    public Kind kind() {
        return Kind.PACK;
    }

    @Override
    public Row toRow(Pack pack, References references) {
        LocalDate bought = pack.bought();
        return Row.empty()
                .with("tag", pack.tag())
                .with("chemistry", pack.chemistry().name())
                .with("cells_in_series", pack.cellsInSeries())
                .with("cells_in_parallel", pack.cellsInParallel())
                .with("rated_capacity_coulombs", pack.ratedCapacityCoulombs())
                .with("charge_rating_amps", pack.chargeRatingAmps())
                .with("discharge_rating_amps", pack.dischargeRatingAmps())
                .with("mass_kilograms", pack.massKilograms())
                .with("connector", pack.connector())
                .with("bought_on", bought == null ? null : bought.toString())
                .with("keeper", pack.keeper())
                .with("identity", pack.identity().name())
                .with("note", pack.note())
                .withParts(
                        LIMITS,
                        pack.makersLimits().stream()
                                .map(limit -> limitRow(limit, pack.tag()))
                                .toList());
    }

    @Override
    public Pack fromRow(Row row, References references) {
        String tag = row.text("tag");
        List<RuleOverride> limits =
                row.parts(LIMITS).stream().map(limit -> limit(limit, tag)).toList();
        return new Pack(
                tag,
                Shape.constant(Chemistry.class, row, "chemistry"),
                Math.toIntExact(row.whole("cells_in_series")),
                Math.toIntExact(row.whole("cells_in_parallel")),
                row.real("rated_capacity_coulombs"),
                row.realOrNull("charge_rating_amps"),
                row.realOrNull("discharge_rating_amps"),
                row.realOrNull("mass_kilograms"),
                row.text("connector"),
                date(row.textOrNull("bought_on")),
                row.text("keeper"),
                Shape.constant(Pack.Identity.class, row, "identity"),
                limits,
                row.text("note"));
    }

    /** A maker's limit follows its pack when the tag changes, so only whether it names the pack is kept. */
    private static Row limitRow(RuleOverride limit, String tag) {
        String named = limit.packTag();
        if (named != null && !named.equalsIgnoreCase(tag)) {
            throw new InputException(
                    "makersLimits",
                    "maker's " + limit.quantity().meaning() + " is for pack " + named + " but is written on " + tag
                            + ". Write it on its own pack.");
        }
        return Row.empty()
                .with("chemistry", limit.chemistry().name())
                .with("quantity", limit.quantity().name())
                .with("value_si", limit.valueSi())
                .withFlag("names_pack", named != null)
                .with("reason", limit.reason());
    }

    private static RuleOverride limit(Row row, String tag) {
        return new RuleOverride(
                Shape.constant(Chemistry.class, row, "chemistry"),
                Shape.constant(Quantity.class, row, "quantity"),
                row.real("value_si"),
                row.flag("names_pack") ? tag : null,
                row.text("reason"));
    }

    private static @Nullable LocalDate date(@Nullable String text) {
        try {
            return text == null ? null : LocalDate.parse(text);
        } catch (DateTimeParseException damaged) {
            throw new UnreadableRowException("bought_on is \"" + text + "\", which is not a date");
        }
    }
}
