package fettle.cli;

import fettle.workshop.Workshop;
import fettle.workshop.worksheet.CraftPower;
import fettle.workshop.worksheet.SurfaceStudy;
import fettle.workshop.worksheet.Worksheet;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code fettle setup power} and {@code fettle setup surface}: worksheets that begin from a craft's latest sheet. */
final class CraftSheetWord {
    private CraftSheetWord() {}

    /** Adds both words to their group. */
    static void addTo(CommandLine group) {
        group.addSubcommand("surface", new OfSurface().word());
        group.addSubcommand("power", new OfCraft().word());
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
    static final class OfSurface extends RecordSheetWord {
        @Parameters(index = "0", paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        @Parameters(index = "1", paramLabel = "SURFACE", description = "The surface, as the sheet calls it.")
        private String surface = "";

        OfSurface() {
            super(SurfaceStudy.fields());
        }

        @Override
        Worksheet begun(Workshop workshop) {
            return SurfaceStudy.of(workshop, craft, surface);
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
    static final class OfCraft extends RecordSheetWord {
        @Parameters(paramLabel = "CRAFT", description = "The craft's name.")
        private String craft = "";

        OfCraft() {
            super(CraftPower.fields());
        }

        @Override
        Worksheet begun(Workshop workshop) {
            return CraftPower.of(workshop, craft);
        }
    }
}
