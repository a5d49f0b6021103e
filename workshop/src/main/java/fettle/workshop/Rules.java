package fettle.workshop;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.rule.RuleOverride;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rules in force and changes to them. */
public final class Rules {
    /** The rules for a chemistry, as changed for the book and, where a tag is given, for that pack. */
    public List<Rule> inForce(Chemistry chemistry, @Nullable String packTag) {
        throw new UnsupportedOperationException();
    }

    /** Changes one; looser needs a reason, and never past the bound of the chemistry. */
    public JournalEntry change(RuleOverride override) {
        throw new UnsupportedOperationException();
    }

    /** Takes a change back, to the default. */
    public JournalEntry reset(Chemistry chemistry, Quantity quantity, @Nullable String packTag) {
        throw new UnsupportedOperationException();
    }
}
