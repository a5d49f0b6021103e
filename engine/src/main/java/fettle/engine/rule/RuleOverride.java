package fettle.engine.rule;

import fettle.engine.cell.Chemistry;
import org.jspecify.annotations.Nullable;

/**
 * A rule changed by a person, for a whole book or one pack.
 *
 * @param chemistry the chemistry it is for
 * @param quantity what it limits
 * @param valueSi the new limit, SI
 * @param packTag the pack it is for; {@code null} for the whole book
 * @param reason why; needed where the new limit is looser
 */
public record RuleOverride(
        Chemistry chemistry,
        Quantity quantity,
        double valueSi,
        @Nullable String packTag,
        String reason) {}
