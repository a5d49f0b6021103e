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
     * Checks a change before it is made. A change for one pack must give a reason also where it is looser than the book's
     * own rule or that pack's maker's limit, which it overrides.
     *
     * @param override the change
     * @param makersLimits limits of the maker of the pack it is for; none for a change of the whole book
     * @throws InputException if it passes the bound of the chemistry, or is looser and gives no reason
     */
    public void refuseUnlessAllowed(RuleOverride override, List<RuleOverride> makersLimits) {
        RuleBounds.refuse(override);
        double usual = override.packTag() == null
                ? DefaultRules.of(override.chemistry(), override.quantity()).valueSi()
                : limitsFor(override.chemistry(), null, makersLimits).si(override.quantity());
        if (override.quantity().loosens(override.valueSi(), usual)
                && override.reason().isBlank()) {
            throw new InputException(
                    "reason",
                    override.quantity().meaning() + " of "
                            + override.quantity().print(override.valueSi()) + " is looser than the rule of "
                            + override.quantity().print(usual) + ". Give the reason; it is kept and shown.");
        }
    }

    private Rule inForce(
            Chemistry chemistry, Quantity quantity, @Nullable String packTag, List<RuleOverride> makersLimits) {
        Rule usual = DefaultRules.of(chemistry, quantity);
        Rule ofAll = usual;
        for (RuleOverride override : overrides) {
            if (override.packTag() == null && override.chemistry() == chemistry && override.quantity() == quantity) {
                ofAll = changed(usual, override, CitationStatus.YOUR_OWN);
            }
        }
        for (RuleOverride limit : makersLimits) {
            if (limit.chemistry() == chemistry && limit.quantity() == quantity) {
                ofAll = changed(usual, limit, CitationStatus.MAKERS_LIMIT);
            }
        }
        Rule rule = ofAll;
        for (RuleOverride override : overrides) {
            boolean here = packTag != null && packTag.equalsIgnoreCase(override.packTag());
            if (here && override.chemistry() == chemistry && override.quantity() == quantity) {
                rule = changed(ofAll, override, CitationStatus.YOUR_OWN);
            }
        }
        return rule;
    }

    /** The rule as changed; loosened if it is looser than what it overrides or than the default. */
    private static Rule changed(Rule overridden, RuleOverride override, CitationStatus status) {
        Chemistry chemistry = overridden.chemistry();
        Quantity quantity = overridden.quantity();
        double value = RuleBounds.held(chemistry, quantity, override.valueSi());
        boolean looser = quantity.loosens(value, overridden.valueSi())
                || quantity.loosens(value, DefaultRules.of(chemistry, quantity).valueSi());
        String reason = override.reason().isBlank() ? "changed by the keeper" : override.reason();
        return new Rule(chemistry, quantity, value, new Citation(reason, status), looser);
    }
}
