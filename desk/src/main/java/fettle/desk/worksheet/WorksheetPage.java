package fettle.desk.worksheet;

import fettle.desk.kit.Field;
import fettle.desk.kit.FormPage;
import fettle.engine.units.Fault;
import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A worksheet with what was typed, what is wrong with it, and its answer.
 *
 * @param worksheet the worksheet
 * @param lines its fields
 * @param faults sentences that belong to no field
 * @param sheet the answer; {@code null} before it was asked for, or where it was refused
 */
public record WorksheetPage(
        Worksheet worksheet,
        List<FormPage.Line> lines,
        List<String> faults,
        @Nullable Sheet sheet) {

    static WorksheetPage asked(Worksheet worksheet) {
        return of(worksheet, Map.of(), List.of(), null);
    }

    static WorksheetPage answered(Worksheet worksheet, Map<String, String> typed, Sheet sheet) {
        return of(worksheet, typed, List.of(), sheet);
    }

    static WorksheetPage refused(Worksheet worksheet, Map<String, String> typed, List<Fault> faults) {
        return of(worksheet, typed, faults, null);
    }

    private static WorksheetPage of(
            Worksheet worksheet, Map<String, String> typed, List<Fault> faults, @Nullable Sheet sheet) {
        List<Field> fields =
                worksheet.fields().stream().map(WorksheetPage::field).toList();
        return new WorksheetPage(
                worksheet,
                FormPage.lines(fields, withUsual(worksheet, typed), faults, key -> List.of()),
                FormPage.atNoField(fields, faults),
                sheet);
    }

    /** What was typed; where nothing was asked yet, the usual values. */
    private static Map<String, String> withUsual(Worksheet worksheet, Map<String, String> typed) {
        if (!typed.isEmpty()) {
            return typed;
        }
        return worksheet.fields().stream().collect(Collectors.toMap(WorksheetField::key, WorksheetField::usual));
    }

    private static Field field(WorksheetField field) {
        Field.Kind typed = field.lines() ? Field.Kind.LINES : Field.Kind.LINE;
        return new Field(
                field.key(),
                field.label(),
                field.hint(),
                field.choices().isEmpty() ? typed : Field.Kind.CHOICE,
                field.choices(),
                Field.Need.DEPENDS,
                field.usual());
    }
}
