package fettle.engine.pack.assessment;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Rule;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;

/** One question asked of every pack. */
interface Inspection {
    /** What holds where nothing is found, in words, e.g. {@code no cell above its charge limit}. */
    String passes();

    /** What was found against it; none where it passes or where the record cannot tell. */
    List<Finding> inspect(PackCase packCase);

    /** True if the record holds what the question needs: only then can it be passed. */
    default boolean canBeAsked(PackCase packCase) {
        return packCase.latest() != null;
    }

    /** A finding whose working is one comparison with a rule. */
    static Finding against(
            Rule rule, String id, Standing standing, String statement, String advice, List<String> inputs) {
        return new Finding(
                id,
                standing,
                statement,
                advice,
                Working.of(new Step(
                        rule.quantity().meaning(),
                        "value against the limit " + rule.print() + (rule.loosened() ? " (loosened)" : ""),
                        inputs,
                        statement,
                        rule.citation())));
    }
}
