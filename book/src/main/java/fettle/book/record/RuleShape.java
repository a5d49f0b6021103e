package fettle.book.record;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;

/** Rules changed for the whole book or for one pack. */
public final class RuleShape implements Shape<RuleOverride> {
    @Override
    public Kind kind() {
        return Kind.RULE;
    }

    @Override
    public Row toRow(RuleOverride override, References references) {
        Long packId = references.id(Kind.PACK, override.packTag());
        if (override.packTag() != null && packId == null) {
            throw new InputException("packTag", "pack " + override.packTag() + " is not in this book. Add it first.");
        }
        return Row.empty()
                .with("chemistry", override.chemistry().name())
                .with("quantity", override.quantity().name())
                .with("value_si", override.valueSi())
                .with("pack_id", packId)
                .with("reason", override.reason());
    }

    @Override
    public RuleOverride fromRow(Row row, References references) {
        return new RuleOverride(
                Shape.constant(Chemistry.class, row, "chemistry"),
                Shape.constant(Quantity.class, row, "quantity"),
                row.real("value_si"),
                references.name(Kind.PACK, row.wholeOrNull("pack_id")),
                row.text("reason"));
    }
}
