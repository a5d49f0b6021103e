package fettle.workshop.worksheet;

import fettle.engine.units.InputException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A what-if sum: typed fields in, a reasoned sheet out. Stateless and thread-safe. */
public final class Worksheet {
    private final String word;
    private final String title;
    private final String question;
    private final List<WorksheetField> fields;
    private final Function<Typed, Sheet> answer;

    Worksheet(String word, String title, String question, List<WorksheetField> fields, Function<Typed, Sheet> answer) {
        this.word = word;
        this.title = title;
        this.question = question;
        this.fields = List.copyOf(fields);
        this.answer = answer;
    }

    /** Its word on the command line and in addresses, e.g. {@code charge}. */
    public String word() {
        return word;
    }

    /** What it is called, e.g. {@code Charge a pack}. */
    public String title() {
        return title;
    }

    /** The question it answers. */
    public String question() {
        return question;
    }

    /** What it asks for. */
    public List<WorksheetField> fields() {
        return fields;
    }

    /**
     * The answer.
     *
     * @param typed what was typed, by key; what is missing stands for its usual value
     * @throws InputException with every fault, each at its field
     */
    public Sheet answer(Map<String, String> typed) {
        return answer.apply(new Typed(typed, fields));
    }
}
