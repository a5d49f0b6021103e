package fettle.cli;

import fettle.workshop.Workshop;
import fettle.workshop.worksheet.CraftPower;
import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.SurfaceStudy;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fettle setup power} and {@code fettle setup surface}: worksheets that begin from a craft's latest sheet. */
final class CraftSheetWord {
    private CraftSheetWord() {}

    /** Adds both words to their group. */
    static void addTo(CommandLine group) {
        add(group, "surface", new OfSurface(), SurfaceStudy.fields());
        add(group, "power", new OfCraft(), CraftPower.fields());
    }

    private static void add(CommandLine group, String word, Runnable runnable, List<WorksheetField> fields) {
        CommandLine command = new CommandLine(runnable);
        SheetFields.addTo(command.getCommandSpec(), fields);
        group.addSubcommand(word, command);
    }

    /** {@code fettle setup surface}. */
    @Command(
            description = {
                "Works out one surface of a craft's latest sheet through its linkage: angles and throws at the end points,"
                        + " pulses for the wanted throws, whether the signal suits the servo, and the servo's margin under"
                        + " load.",
                "The surface's line needs a linkage, and its servo must be registered."
            },
            footer = {
                "",
                "For example:",
                "  fettle setup surface Harrier \"left aileron\" --volts 5.4V --speed 120km/h --span 400"
            })
    static final class OfSurface implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Parameters(index = "0", paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        @Parameters(index = "1", paramLabel = "SURFACE", description = "The surface, as the sheet calls it.")
        private String surface = "";

        @Option(names = "--working", description = "Show the steps behind the figures.")
        private boolean working;

        @Override
        public void run() {
            print(
                    session,
                    working,
                    SheetFields.typed(spec, SurfaceStudy.fields()),
                    open -> SurfaceStudy.of(open, craft, surface));
        }
    }

    /** {@code fettle setup power}. */
    @Command(
            description = {
                "Works out whether BEC or receiver pack bears the servos of a craft's latest sheet, and what helps most if"
                        + " not.",
                "Currents come from kept sweeps first, from the registered servos' data second; what is assumed is said."
            },
            footer = {
                "",
                "For example:",
                "  fettle setup power Harrier --input 12.6V --output 6V --continuous 5A --peak 8A"
            })
    static final class OfCraft implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Parameters(paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        @Option(names = "--working", description = "Show the steps behind the figures.")
        private boolean working;

        @Override
        public void run() {
            print(session, working, SheetFields.typed(spec, CraftPower.fields()), open -> CraftPower.of(open, craft));
        }
    }

    private static void print(
            Session session, boolean working, Map<String, String> typed, Function<Workshop, Worksheet> worksheet) {
        try (Workshop workshop = session.open()) {
            Sheet sheet = worksheet.apply(workshop).answer(typed);
            session.print(sheet, SheetFields.text(sheet, working));
        }
    }
}
