package fettle.cli;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Rule;
import fettle.workshop.JournalEntry;
import fettle.workshop.RuleForm;
import fettle.workshop.Workshop;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The words under {@code fettle rule}. */
final class RuleWord {
    private RuleWord() {}

    /** {@code fettle rule list}. */
    @Command(
            name = "list",
            description = "Lists the rules in force with their sources.",
            footer = {"", "For example:", "  fettle rule list --chemistry LiPo", "  fettle rule list --pack P07"})
    static final class ListRules implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Option(names = "--chemistry", paramLabel = "CHEMISTRY", description = "One chemistry only.")
        private @Nullable String chemistry;

        @Option(names = "--pack", paramLabel = "TAG", description = "As they are for one pack.")
        private @Nullable String tag;

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                List<Rule> rules = chemistries(workshop).stream()
                        .flatMap(known -> workshop.rules().inForce(known, tag).stream())
                        .toList();
                session.print(
                        rules, rules.stream().map(ListRules::line).collect(Collectors.joining(System.lineSeparator())));
            }
        }

        private List<Chemistry> chemistries(Workshop workshop) {
            if (tag != null) {
                return List.of(workshop.packs().find(tag).item().chemistry());
            }
            return chemistry == null ? Arrays.asList(Chemistry.values()) : List.of(Chemistry.parse(chemistry));
        }

        private static String line(Rule rule) {
            return String.format(
                    "%-30s %10s  %s%s",
                    rule.id(), rule.print(), rule.citation().status().label(), rule.loosened() ? "  LOOSENED" : "");
        }
    }

    /** {@code fettle rule set}. */
    @Command(
            name = "set",
            description = "Changes a rule for the book or one pack. Looser needs --reason.",
            footer = {
                "",
                "For example:",
                "  fettle rule set LiPo storage-time 48h --pack P07",
                "  fettle rule set LiPo storage-time 96h --reason \"kept in a cold cellar\""
            })
    static final class SetRule implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(
                index = "0",
                paramLabel = "CHEMISTRY",
                description = "LiPo, LiHV, LiFePO4, Li-ion, NiMH or lead-acid.")
        private String chemistry = "";

        @Parameters(index = "1", paramLabel = "RULE", description = "Its key, as rule list shows it.")
        private String quantity = "";

        @Parameters(index = "2", paramLabel = "VALUE", description = "In the rule's own unit.")
        private String value = "";

        @Option(names = "--pack", paramLabel = "TAG", description = "For one pack only.")
        private String tag = "";

        @Option(names = "--reason", paramLabel = "TEXT", description = "Why; needed where the new limit is looser.")
        private String reason = "";

        @Override
        public void run() {
            var change = new RuleForm(chemistry, quantity, value, tag, reason).toOverride();
            try (Workshop workshop = session.open()) {
                JournalEntry entry = workshop.rules().change(change);
                session.print(entry, entry.sentence());
            }
        }
    }

    /** {@code fettle rule reset}. */
    @Command(
            name = "reset",
            description = "Takes a changed rule back to its default.",
            footer = {"", "For example:", "  fettle rule reset LiPo storage-time"})
    static final class ResetRule implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(
                index = "0",
                paramLabel = "CHEMISTRY",
                description = "LiPo, LiHV, LiFePO4, Li-ion, NiMH or lead-acid.")
        private String chemistry = "";

        @Parameters(index = "1", paramLabel = "RULE", description = "Its key, as rule list shows it.")
        private String quantity = "";

        @Option(names = "--pack", paramLabel = "TAG", description = "The change made for this pack.")
        private @Nullable String tag;

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                JournalEntry entry =
                        workshop.rules().reset(Chemistry.parse(chemistry), RuleForm.parseQuantity(quantity), tag);
                session.print(entry, entry.sentence());
            }
        }
    }
}
