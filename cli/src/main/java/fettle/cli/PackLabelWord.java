package fettle.cli;

import fettle.desk.label.LabelSheets;
import fettle.workshop.Workshop;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle pack label}. */
@Command(
        name = "label",
        description = "Writes labels with a square code as PDF. Print it without scaling.",
        footer = {
            "",
            "For example:",
            "  fettle pack label P07 P08 --out labels.pdf",
            "  fettle pack label --sheet a4-38x21 --start 14 --out all.pdf"
        })
final class PackLabelWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Parameters(arity = "0..*", paramLabel = "TAG", description = "Tags of packs; without any, every pack in use.")
    private List<String> tags = List.of();

    @Option(names = "--sheet", paramLabel = "GRID", description = "Grid of labels; without it they are listed.")
    private String sheet = "";

    @Option(
            names = "--start",
            paramLabel = "PLACE",
            defaultValue = "1",
            description = "First label used, counted along the rows. Default: ${DEFAULT-VALUE}.")
    private int start;

    @Option(
            names = "--address",
            paramLabel = "URL",
            description = "Address of the desk that codes lead to. Without it they hold fettle: and the tag.")
    private String address = "";

    @Option(names = "--out", paramLabel = "FILE", description = "A new PDF file. Without it nothing is written.")
    private @Nullable Path out;

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            LabelRun run = workshop.labels().of(tags, sheet, start, address);
            if (out != null) {
                NewFile.write(out, LabelSheets.pdf(run));
            }
            session.print(run, text(run));
        }
    }

    private String text(LabelRun run) {
        String made = run.labels().size() + (run.labels().size() == 1 ? " label on " : " labels on ") + run.sheets()
                + (run.sheets() == 1 ? " sheet" : " sheets") + " ("
                + run.sheet().description() + ")";
        if (out != null) {
            return "wrote " + made + " to " + out;
        }
        return made + System.lineSeparator() + "grids:" + System.lineSeparator()
                + Arrays.stream(LabelGrid.values())
                        .map(grid -> String.format("  %-15s %s", grid.key(), grid.description()))
                        .collect(Collectors.joining(System.lineSeparator()));
    }
}
