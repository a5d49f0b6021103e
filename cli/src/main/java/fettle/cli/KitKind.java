package fettle.cli;

import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import java.util.Locale;
import java.util.function.Function;

/**
 * One kind of kit, as the command line handles all of them alike.
 *
 * @param word the word on the command line, e.g. {@code pack}
 * @param plural several of them, in sentences
 * @param shelf where the workshop keeps it
 * @param label one item in a few words, without its name
 * @param typed one item as a person would type it: a record of texts
 * @param examples what the help shows
 */
record KitKind<T>(
        String word,
        String plural,
        Function<Workshop, Shelf<T>> shelf,
        Function<T, String> label,
        Function<T, Record> typed,
        Examples examples) {
    /**
     * How one item is named and described in the examples of the help.
     *
     * @param name its name
     * @param fields the options that describe it in full
     * @param change an option that changes it
     */
    record Examples(String name, String fields, String change) {}

    /** What can be done with every kind alike. */
    enum Verb {
        LIST("Lists the %2$s in use."),
        SHOW("Shows one %s in full."),
        ADD("Registers one %s."),
        EDIT("Changes one %s: what is not given stays as it was, an empty text (\"\") takes a field out."),
        RETIRE("Takes one %s out of use; its record stays."),
        RESTORE("Takes one %s into use again.");

        private final String description;

        Verb(String description) {
            this.description = description;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        String description(KitKind<?> kind) {
            return String.format(description, kind.word(), kind.plural());
        }

        /** A whole command of this verb. */
        String example(KitKind<?> kind) {
            String name = kind.examples().name();
            String arguments = switch (this) {
                case LIST -> "--all";
                case SHOW, RESTORE -> name;
                case ADD -> name + " " + kind.examples().fields();
                case EDIT -> name + " " + kind.examples().change();
                case RETIRE -> name + " --reason sold";
            };
            return "fettle " + kind.word() + " " + word() + " " + arguments;
        }
    }
}
