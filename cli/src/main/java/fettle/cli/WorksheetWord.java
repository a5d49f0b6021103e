package fettle.cli;

import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.Worksheets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code fettle work charge} and its like: one word per worksheet, one option per field. */
@Command
final class WorksheetWord implements Runnable {
    private final Worksheet worksheet;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final Printing printing = new Printing();

    @Option(names = "--working", description = "Show the steps behind the figures.")
    private boolean working;

    private WorksheetWord(Worksheet worksheet) {
        this.worksheet = worksheet;
    }

    /** Adds the words of all worksheets to a group. */
    static void addTo(CommandLine group) {
        for (Worksheet worksheet : Worksheets.all()) {
            CommandLine word = new CommandLine(new WorksheetWord(worksheet));
            CommandSpec spec = word.getCommandSpec();
            spec.usageMessage()
                    .description(worksheet.title() + ". " + worksheet.question())
                    .footer("", "For example:", "  " + WorksheetExamples.of(worksheet));
            SheetFields.addTo(spec, worksheet.fields());
            group.addSubcommand(worksheet.word(), word);
        }
    }

    @Override
    public void run() {
        Sheet sheet = worksheet.answer(SheetFields.typed(spec, worksheet.fields()));
        printing.print(sheet, SheetFields.text(sheet, working));
    }
}
