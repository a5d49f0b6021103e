package fettle.engine.rule;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.InputException;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a book: defaults, changed for the whole book, then by a pack's maker, then for one pack. Immutable.
 *
 * @param overrides changes made by people, oldest first; the latest for the same place holds
 */
public record RuleSet(List<RuleOverride> overrides) {
    public RuleSet {
        overrides = List.copyOf(overrides);
    }

    public static RuleSet of(List<RuleOverride> overrides) {
        return new RuleSet(overrides);
    }

    /** Rules of a chemistry; with a tag, as changed for that pack. */
    public List<Rule> rules(Chemistry chemistry, @Nullable String packTag) {
        return limitsFor(chemistry, packTag, List.of()).all();
    }

    /** The limits that hold for one pack. */
    public Limits limitsFor(Chemistry chemistry, @Nullable String packTag, List<RuleOverride> makersLimits) {
        return new Limits(Arrays.stream(Quantity.values())
                .map(quantity -> inForce(chemistry, quantity, packTag, makersLimits))
                .toList());
    }

    /**
     * Checks a change before it is made.
     *
     * @throws InputException if it passes the bound of the chemistry, or is looser and gives no reason
     */
    public void refuseUnlessAllowed(RuleOverride override) {
        RuleBounds.refuse(override);
        double usual =
                DefaultRules.of(override.chemistry(), override.quantity()).valueSi();
        if (override.quantity().loosens(override.valueSi(), usual)
                && override.reason().isBlank()) {
            throw new InputException(
                    "reason",
                    override.quantity().meaning() + " of "
                            + override.quantity().unit().print(override.valueSi(), 2) + " is looser than the rule of "
                            + override.quantity().unit().print(usual, 2) + ". Give the reason; it is kept and shown.");
        }
    }

    private Rule inForce(
            Chemistry chemistry, Quantity quantity, @Nullable String packTag, List<RuleOverride> makersLimits) {
        Rule rule = DefaultRules.of(chemistry, quantity);
        for (RuleOverride override : overrides) {
            if (override.packTag() == null && override.chemistry() == chemistry && override.quantity() == quantity) {
                rule = changed(rule, override, CitationStatus.YOUR_OWN);
            }
        }
        for (RuleOverride limit : makersLimits) {
            if (limit.chemistry() == chemistry && limit.quantity() == quantity) {
                rule = changed(rule, limit, CitationStatus.MAKERS_LIMIT);
            }
        }
        for (RuleOverride override : overrides) {
            boolean here = packTag != null && packTag.equalsIgnoreCase(override.packTag());
            if (here && override.chemistry() == chemistry && override.quantity() == quantity) {
                rule = changed(rule, override, CitationStatus.YOUR_OWN);
            }
        }
        return rule;
    }

    private static Rule changed(Rule rule, RuleOverride override, CitationStatus status) {
        double usual = DefaultRules.of(rule.chemistry(), rule.quantity()).valueSi();
        boolean looser = rule.quantity().loosens(override.valueSi(), usual);
        String reason = override.reason().isBlank() ? "changed by the keeper" : override.reason();
        return new Rule(rule.chemistry(), rule.quantity(), override.valueSi(), new Citation(reason, status), looser);
    }
}
