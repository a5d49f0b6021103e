package fettle.workshop;

import fettle.engine.health.PackHealth;
import fettle.engine.pack.PackHistory;
import fettle.engine.rule.Rule;
import java.util.List;

/**
 * Everything about one pack.
 *
 * @param review its state and what to do
 * @param health what its record and its traces say of it
 * @param retired whether it is out of use
 * @param history what was noted
 * @param exceptions what its traces showed past a limit, oldest trace first
 * @param alike packs of the same label bought within a month of it, itself among them; empty if there is no other
 * @param rules what holds for it
 */
public record PackFile(
        PackReview review,
        PackHealth health,
        boolean retired,
        PackHistory history,
        List<PastLimit> exceptions,
        List<AlikePack> alike,
        List<Rule> rules) {
    public PackFile {
        exceptions = List.copyOf(exceptions);
        alike = List.copyOf(alike);
        rules = List.copyOf(rules);
    }
}
