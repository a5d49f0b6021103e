package fettle.desk.worksheet;

import fettle.desk.kit.Field;
import fettle.desk.kit.FormPage;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.worksheet.Sheet;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
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
 * @param from where its form goes and what it came from
 */
public record WorksheetPage(
        Worksheet worksheet,
        List<FormPage.Line> lines,
        List<String> faults,
        @Nullable Sheet sheet,
        From from) {
    /**
     * Where a worksheet stands.
     *
     * @param action address its form goes to
     * @param kept what the form sends beside its fields
     * @param up address of the page it belongs to
     * @param upTitle that page's title
     */
    public record From(String action, Map<String, String> kept, String up, String upTitle) {
        public From {
            kept = Map.copyOf(kept);
        }

        static From list(Worksheet worksheet) {
            return new From("/worksheets/" + worksheet.word(), Map.of(), "/worksheets", "Worksheets");
        }
    }

    /** The page for what stands in the address; the status says so where it is refused. */
    public static WorksheetPage of(Context ctx, Worksheet worksheet, From from) {
        Map<String, String> typed = typed(ctx, worksheet);
        if (typed.isEmpty()) {
            return of(worksheet, Map.of(), List.of(), null, from);
        }
        try {
            return of(worksheet, typed, List.of(), worksheet.answer(typed), from);
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            return of(worksheet, typed, refused.faults(), null, from);
        }
    }

    private static Map<String, String> typed(Context ctx, Worksheet worksheet) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (WorksheetField field : worksheet.fields()) {
            String word = ctx.queryParam(field.key());
            if (word != null) {
                typed.put(field.key(), word);
            }
        }
        return typed;
    }

    private static WorksheetPage of(
            Worksheet worksheet, Map<String, String> typed, List<Fault> faults, @Nullable Sheet sheet, From from) {
        List<Field> fields =
                worksheet.fields().stream().map(WorksheetPage::field).toList();
        return new WorksheetPage(
                worksheet,
                FormPage.lines(fields, withUsual(worksheet, typed), faults, key -> List.of()),
                FormPage.atNoField(fields, faults),
                sheet,
                from);
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
