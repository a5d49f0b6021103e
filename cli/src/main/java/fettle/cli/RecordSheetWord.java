package fettle.cli;

import fettle.workshop.Workshop;
import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A word that works a worksheet out which begins from the record; the worksheet's fields are its options. */
abstract class RecordSheetWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--working", description = "Show the steps behind the figures.")
    private boolean working;

    private final List<WorksheetField> fields;

    RecordSheetWord(List<WorksheetField> fields) {
        this.fields = List.copyOf(fields);
    }

    /** The worksheet, begun from the record. */
    abstract Worksheet begun(Workshop workshop);

    /** The word, ready to be added to its group. */
    final CommandLine word() {
        CommandLine command = new CommandLine(this);
        SheetFields.addTo(command.getCommandSpec(), fields);
        return command;
    }

    @Override
    public final void run() {
        try (Workshop workshop = session.open()) {
            Sheet sheet = begun(workshop).answer(SheetFields.typed(spec, fields));
            session.print(sheet, SheetFields.text(sheet, working));
        }
    }
}
