package fettle.cli;

import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.WorksheetField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** A worksheet's fields as options of a word, and its answer as text. */
final class SheetFields {
    private SheetFields() {}

    static void addTo(CommandSpec spec, List<WorksheetField> fields) {
        fields.forEach(field -> spec.addOption(option(field)));
    }

    /** What was typed, by key. */
    static Map<String, String> typed(CommandSpec spec, List<WorksheetField> fields) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (WorksheetField field : fields) {
            List<String> values = spec.findOption("--" + field.key()).getValue();
            if (values != null) {
                typed.put(field.key(), String.join(field.lines() ? "\n" : " ", values));
            }
        }
        return typed;
    }

    static String text(Sheet sheet, boolean working) {
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
}
