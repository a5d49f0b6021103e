package fettle.cli;

import fettle.engine.control.sweep.Sweep;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.workshop.JournalEntry;
import fettle.workshop.Workshop;
import fettle.workshop.sweep.SweepAnswer;
import fettle.workshop.sweep.SweepChoices;
import fettle.workshop.sweep.SweepReading;
import fettle.workshop.sweep.TypedSweep;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fettle sweep FILE}: where a servo binds, from a file of pulses and currents. */
@Command(
        name = "sweep",
        description = {
            "Reads a servo's sweep: where it binds, its friction, worn spots, and end points to set.",
            "The file holds pulses and currents, one reading a line, CSV of any dialect; angles if there are any."
        },
        footer = {
            "",
            "For example:",
            "  fettle sweep aileron.csv --idle 12mA",
            "  fettle sweep aileron.csv --craft Harrier --surface \"left aileron\"",
            "  fettle sweep --point \"1000 580mA\" --point \"1100 210mA\" --point \"1200 200mA\" …",
            "  fettle sweep aileron.csv --before aileron-spring.csv --working"
        })
final class SweepWord implements Runnable {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The sweep; left out where --point is used.")
    private @Nullable Path file;

    @Option(
            names = "--point",
            paramLabel = "READING",
            description = "A reading typed instead of a file: pulse, current, and angle if known. Repeat it.")
    private List<String> points = List.of();

    @Option(names = "--before", paramLabel = "FILE", description = "An earlier sweep of the same surface.")
    private @Nullable Path before;

    @Option(names = "--pulse", paramLabel = "COLUMN", description = "Heading or number of the pulses.")
    private String pulse = "";

    @Option(names = "--current", paramLabel = "COLUMN", description = "Heading or number of the current.")
    private String current = "";

    @Option(names = "--angle", paramLabel = "COLUMN", description = "Heading or number of the angles, or none.")
    private String angle = "";

    @Option(names = "--pulse-unit", paramLabel = "UNIT", description = "µs (or us) or ms.")
    private String pulseUnit = "";

    @Option(names = "--current-unit", paramLabel = "UNIT", description = "mA or A.")
    private String currentUnit = "";

    @Option(names = "--idle", paramLabel = "CURRENT", description = "Read with the servo still, e.g. 12 mA.")
    private String idle = "";

    @Option(names = "--stall", paramLabel = "CURRENT", description = "Of its sheet at this voltage, e.g. 1.8 A.")
    private String stall = "";

    @Option(names = "--working", description = "Show the steps behind the figures.")
    private boolean working;

    @Option(names = "--craft", paramLabel = "NAME", description = "Keep it in the book as a sweep of this craft.")
    private String craft = "";

    @Option(names = "--surface", paramLabel = "NAME", description = "And of this surface, e.g. \"left aileron\".")
    private String surface = "";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final Session session = new Session();

    @Override
    public void run() {
        SweepChoices choices = new SweepChoices(
                pulse, current, angle, pulseUnit, currentUnit, amps("idle", idle), amps("stall", stall));
        SweepReading reading = reading(choices);
        Sweep earlier = before == null ? null : SweepReading.of(before, choices).sweep();
        if (craft.isBlank() && surface.isBlank()) {
            print(reading, earlier);
            return;
        }
        try (Workshop workshop = session.open()) {
            Sweep beside = earlier != null
                    ? earlier
                    : workshop.setUps()
                            .latestSweep(craft, surface)
                            .map(kept -> kept.sweep().sweep())
                            .orElse(null);
            JournalEntry entry = workshop.setUps().keep(craft, surface, reading.file(), reading.sweep());
            print(reading, beside);
            session.progress(entry.sentence());
        }
    }

    private SweepReading reading(SweepChoices choices) {
        Path given = file;
        if ((given == null) == points.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "give either FILE or readings with --point, e.g. --point \"1000 580mA\"");
        }
        return given != null ? SweepReading.of(given, choices) : TypedSweep.read(String.join("\n", points), choices);
    }

    private void print(SweepReading reading, @Nullable Sweep earlier) {
        SweepAnswer answer = earlier == null ? SweepAnswer.of(reading) : SweepAnswer.of(reading, earlier);
        session.print(answer, SweepText.of(answer, PackText.Detail.of(working)));
    }

    private static @Nullable Double amps(String field, String typed) {
        return QuantityText.siOrNull(field, "current (--" + field + ")", typed, Measure.CURRENT, null);
    }
}
