package fettle.cli;

import fettle.engine.units.Counted;
import fettle.workshop.JournalEntry;
import fettle.workshop.KeptSheet;
import fettle.workshop.SetUps;
import fettle.workshop.Workshop;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The words under {@code fettle setup}. */
final class SetUpWord {
    private SetUpWord() {}

    /** {@code fettle setup add}. */
    @Command(
            name = "add",
            description = "Keeps a set-up sheet of a craft: every surface as it was set.",
            footer = {
                "",
                "For example:",
                "  fettle setup add Harrier --surface \"rudder; wing; 1100 1500 1900; 80 mm; all 25/25; arm 10; horn 15\"",
                "  fettle setup add Harrier --surface \"rudder; wing; 1100 1500 1900; 80 mm; all 25/25; arm 10; horn 15;"
                        + " pushrod aft 120 above 0 arm 90 horn 90\""
            })
    static final class AddSheet implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        @Option(
                names = "--surface",
                paramLabel = "LINE",
                required = true,
                description =
                        "Name; servo; lowest centre highest in µs; chord; throws up/down in degrees by rate. Then, if"
                                + " known: arm, horn, pushrod (or cables, torque-rod), idle, largest, reversed. Repeat it.")
        private List<String> surfaces = List.of();

        @Option(
                names = "--date",
                paramLabel = "DATE",
                description = "When it was set, e.g. 2026-05-16. Default: today.")
        private String date = "";

        @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
        private String note = "";

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                JournalEntry entry = workshop.setUps().add(craft, String.join("\n", surfaces), SetUps.day(date), note);
                session.print(entry, entry.sentence());
            }
        }
    }

    /** {@code fettle setup show}. */
    @Command(
            name = "show",
            description = "Shows a craft's latest set-up sheet, what differs from the one before, and what to check.",
            footer = {"", "For example:", "  fettle setup show Harrier"})
    static final class ShowSheet implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                KeptSheet sheet = workshop.setUps().latest(craft);
                session.print(sheet, SheetText.of(sheet));
            }
        }
    }

    /** {@code fettle setup list}. */
    @Command(
            name = "list",
            description = "Lists a craft's set-up sheets, the latest first.",
            footer = {"", "For example:", "  fettle setup list Harrier"})
    static final class ListSheets implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                List<KeptSheet> sheets = workshop.setUps().of(craft);
                session.print(
                        sheets,
                        sheets.isEmpty()
                                ? "no set-up sheet yet"
                                : sheets.stream()
                                        .map(sheet -> sheet.sheet().date() + "  "
                                                + Counted.of(
                                                        sheet.sheet().surfaces().size(), "surface") + ", "
                                                + Counted.of(sheet.differences().size(), "difference") + "  "
                                                + sheet.sheet().note())
                                        .collect(Collectors.joining(System.lineSeparator())));
            }
        }
    }
}
