package fettle.cli;

import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.sweep.SweepAnswer;
import fettle.workshop.sweep.SweepChoices;
import fettle.workshop.sweep.SweepReading;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
            "  fettle sweep aileron.csv --before aileron-spring.csv --working"
        })
final class SweepWord implements Runnable {
    @Parameters(paramLabel = "FILE", description = "The sweep.")
    private Path file = Path.of("");

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

    @Mixin
    private final Printing printing = new Printing();

    @Override
    public void run() {
        SweepChoices choices = new SweepChoices(
                pulse, current, angle, pulseUnit, currentUnit, amps("idle", idle), amps("stall", stall));
        SweepReading reading = SweepReading.of(file, choices);
        SweepAnswer answer =
                before == null ? SweepAnswer.of(reading) : SweepAnswer.of(reading, SweepReading.of(before, choices));
        printing.print(answer, SweepText.of(answer, PackText.Detail.of(working)));
    }

    private static @Nullable Double amps(String field, String typed) throws InputException {
        return typed.isBlank()
                ? null
                : Double.valueOf(
                        QuantityText.si(field, "current (--" + field + ")", typed, Measure.CURRENT, (TradeUnit) null));
    }
}
