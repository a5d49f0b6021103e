package fettle.cli;

import fettle.desk.json.Shapes;
import fettle.engine.pack.simulation.Progress;
import fettle.engine.pack.simulation.Summary;
import fettle.workshop.scenario.Scenario;
import fettle.workshop.scenario.SeriesColumns;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fettle work simulate}. */
@Command(
        name = "simulate",
        description = "Simulates the cells, packs and steps of a scenario file and sums up what happened.",
        footer = {
            "",
            "The file is JSON: see docs/scenario-file.md.",
            "With --csv the series goes to standard output and the summary to standard error.",
            "",
            "For example:",
            "  fettle work simulate scenario.json --csv"
        })
final class SimulateWord implements Runnable {
    private static final int DIGITS = 8;
    private static final double SECONDS_BETWEEN_REPORTS = 3600;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final HelpOption help = new HelpOption();

    @Parameters(paramLabel = "FILE", description = "The scenario file.")
    private Path file = Path.of("");

    @ArgGroup
    private Form form = new Form();

    /** How to print. */
    private static final class Form {
        @Option(names = "--json", description = "Print summary and series as JSON, in SI units.")
        private boolean json;

        @Option(names = "--csv", description = "Print the series as CSV.")
        private boolean csv;
    }

    /**
     * Everything, as JSON.
     *
     * @param title title of the scenario
     * @param summary what it came to
     * @param columns names of the series' columns
     * @param series rows of the series
     */
    record Told(String title, Summary summary, List<String> columns, List<double[]> series) {}

    @Override
    public void run() {
        Scenario scenario = Scenario.parse(
                Objects.requireNonNullElse(file.getFileName(), file).toString(), text());
        List<String> columns = SeriesColumns.of(scenario.bench()).names();
        PrintWriter out = spec.commandLine().getOut();
        if (form.json) {
            List<double[]> series = new ArrayList<>();
            Summary summary = scenario.run(row -> series.add(row.clone()), progress());
            out.println(Shapes.write(new Told(scenario.title(), summary, columns, series)));
        } else if (form.csv) {
            out.println(String.join(",", columns));
            Summary summary = scenario.run(row -> out.println(line(row)), progress());
            spec.commandLine().getErr().println(SummaryText.of(scenario.title(), summary));
            spec.commandLine().getErr().flush();
        } else {
            out.println(SummaryText.of(scenario.title(), scenario.run(row -> {}, progress())));
        }
        out.flush();
    }

    private String text() {
        try {
            return Files.readString(file);
        } catch (NoSuchFileException e) {
            throw new RefusedException("there is no file " + file + ".");
        } catch (MalformedInputException e) {
            throw new RefusedException(file + " is not UTF-8 text. Save it as UTF-8.");
        } catch (IOException e) {
            throw new RefusedException(file + " cannot be read: " + e.getMessage() + ".");
        }
    }

    private static String line(double[] row) {
        return DoubleStream.of(row).mapToObj(SimulateWord::figure).collect(Collectors.joining(","));
    }

    private static String figure(double value) {
        String printed = String.format(Locale.ROOT, "%." + DIGITS + "f", value);
        return printed.replaceAll("\\.?0+$", "");
    }

    /** Tells every simulated hour that a long run has come to. */
    private Progress progress() {
        double[] next = {24 * SECONDS_BETWEEN_REPORTS};
        return (seconds, steps) -> {
            if (seconds >= next[0]) {
                next[0] = 2 * seconds;
                spec.commandLine()
                        .getErr()
                        .println("simulated " + Math.round(seconds / SECONDS_BETWEEN_REPORTS) + " h, " + steps
                                + " steps");
                spec.commandLine().getErr().flush();
            }
            return !Thread.currentThread().isInterrupted();
        };
    }
}
