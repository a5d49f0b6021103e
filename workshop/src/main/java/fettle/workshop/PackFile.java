package fettle.workshop;

import fettle.engine.health.PackHealth;
import fettle.engine.pack.PackHistory;
import fettle.engine.rule.Rule;
import java.util.List;

/** Everything about one pack: its review, its health, its history and the rules in force for it. */
public record PackFile(PackReview review, PackHealth health, boolean retired, PackHistory history, List<Rule> rules) {}
