package fettle.cli;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A form as a list of fields, one a line, those not stated left out. */
final class TypedText {
    private TypedText() {}

    static String of(Record form) {
        List<String> lines = new ArrayList<>();
        for (RecordComponent field : form.getClass().getRecordComponents()) {
            String typed = typed(form, field);
            if (!typed.isBlank()) {
                lines.add(String.format("%-17s %s", words(field.getName()), typed.replace("\n", "; ")));
            }
        }
        return String.join(System.lineSeparator(), lines);
    }

    private static String typed(Record form, RecordComponent field) {
        try {
            return String.valueOf(field.getAccessor().invoke(form));
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException("a form's field cannot be read", fault);
        }
    }

    private static String words(String camelCase) {
        return camelCase.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }
}
