package fettle.cli;

import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import fettle.workshop.worksheet.Worksheets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
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
            worksheet.fields().forEach(field -> spec.addOption(option(field)));
            group.addSubcommand(worksheet.word(), word);
        }
    }

    private static OptionSpec option(WorksheetField field) {
        String usual = field.usual().isEmpty() ? "" : " Usually " + field.usual() + ".";
        String choices = field.choices().isEmpty() ? "" : " One of " + String.join(", ", field.choices()) + ".";
        return OptionSpec.builder("--" + field.key())
                .paramLabel(field.lines() ? "LINE" : "VALUE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .description(escaped(
                        field.label() + ". " + field.hint() + choices + usual + (field.lines() ? " Repeat it." : "")))
                .build();
    }

    /** Descriptions are format strings. */
    private static String escaped(String text) {
        return text.replace("%", "%%");
    }

    @Override
    public void run() {
        Sheet sheet = worksheet.answer(typed());
        printing.print(sheet, text(sheet));
    }

    private Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        for (WorksheetField field : worksheet.fields()) {
            List<String> values = spec.findOption("--" + field.key()).getValue();
            if (values != null) {
                typed.put(field.key(), String.join(field.lines() ? "\n" : " ", values));
            }
        }
        return typed;
    }

    private String text(Sheet sheet) {
        List<String> lines = new ArrayList<>();
        lines.add(sheet.verdict());
        lines.add("");
        for (Sheet.Figure figure : sheet.figures()) {
            String from = figure.drivers().isEmpty() ? "" : "   ± from " + figure.drivers();
            lines.add(String.format("%-28s %18s%s", figure.label(), figure.printed(), from));
        }
        sheet.notes().forEach(note -> lines.addAll(Wrapped.lines("", note)));
        if (!sheet.caution().isEmpty()) {
            lines.addAll(Wrapped.lines("caution", sheet.caution()));
        }
        WorkingText.add(sheet.working(), PackText.Detail.of(working), lines);
        return String.join(System.lineSeparator(), lines);
    }
}
