package fettle.workshop;

import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Items;
import fettle.book.store.Note;
import fettle.book.store.Stored;
import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.rule.RuleOverride;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.InputException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The rules in force and changes to them. Thread-safe. */
public final class Rules {
    private final Ledger ledger;
    private final Shelf<Pack> packs;
    private final Items<RuleOverride> items;

    Rules(Ledger ledger, Shelf<Pack> packs) {
        this.ledger = ledger;
        this.packs = packs;
        this.items = ledger.book().items(Shapes.RULE);
    }

    /** The rules for a chemistry, as changed for the book and, where a tag is given, for that pack and by its maker. */
    public List<Rule> inForce(Chemistry chemistry, @Nullable String packTag) {
        if (packTag == null) {
            return set().rules(chemistry, null);
        }
        Pack pack = packs.find(packTag).item();
        return set().limitsFor(chemistry, pack.tag(), pack.makersLimits()).all();
    }

    /** The limits in force for a pack. */
    Limits limits(Pack pack) {
        return set().limitsFor(pack.chemistry(), pack.tag(), pack.makersLimits());
    }

    /**
     * Changes one.
     *
     * @throws InputException if it is looser and gives no reason, or passes the bound of the chemistry
     * @throws UnknownNameException if the pack it is for is not in this book
     */
    public JournalEntry change(RuleOverride override) {
        return ledger.together(() -> {
            set().refuseUnlessAllowed(override, makersLimits(override.packTag()));
            String subject = subject(override.packTag());
            String reason =
                    override.reason().isBlank() ? "" : " (" + override.reason().strip() + ")";
            Note note = ledger.note(
                    "changed " + words(override.chemistry(), override.quantity()) + " to "
                            + override.quantity().print(override.valueSi()) + place(subject) + reason,
                    subject);
            Optional<Stored<RuleOverride>> present =
                    present(override.chemistry(), override.quantity(), override.packTag());
            return Ledger.fresh(
                    present.isPresent()
                            ? items.replace(present.get().id(), override, note)
                            : items.add(override, Row.empty(), note));
        });
    }

    /** Takes a change back, to the default. */
    public JournalEntry reset(Chemistry chemistry, Quantity quantity, @Nullable String packTag) {
        return ledger.together(() -> {
            String subject = subject(packTag);
            String what = words(chemistry, quantity) + place(subject);
            Stored<RuleOverride> present = present(chemistry, quantity, packTag)
                    .orElseThrow(() -> new InputException("quantity", what + " is not changed in this book."));
            Note note = ledger.note("reset " + what, subject);
            return Ledger.fresh(items.mark(present.id(), Row.empty().withFlag("withdrawn", true), note));
        });
    }

    /** Every rule with the book's changes. */
    RuleSet set() {
        return RuleSet.of(ledger.use(items::all).stream().map(Stored::item).toList());
    }

    private Optional<Stored<RuleOverride>> present(Chemistry chemistry, Quantity quantity, @Nullable String packTag) {
        return items.all().stream()
                .filter(stored -> stored.item().chemistry() == chemistry
                        && stored.item().quantity() == quantity
                        && samePlace(stored.item().packTag(), packTag))
                .findFirst();
    }

    private static boolean samePlace(@Nullable String one, @Nullable String other) {
        return one == null ? other == null : one.equalsIgnoreCase(other);
    }

    private List<RuleOverride> makersLimits(@Nullable String packTag) {
        return packTag == null ? List.of() : packs.find(packTag).item().makersLimits();
    }

    private String subject(@Nullable String packTag) {
        return packTag == null ? "" : packs.find(packTag).name();
    }

    private static String words(Chemistry chemistry, Quantity quantity) {
        return chemistry.label() + " " + quantity.meaning();
    }

    private static String place(String subject) {
        return subject.isEmpty() ? "" : " for " + subject;
    }
}
