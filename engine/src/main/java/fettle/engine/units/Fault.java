package fettle.engine.units;

/**
 * One thing wrong with an input.
 *
 * @param field key of the field at fault, as forms and JSON name it
 * @param sentence what is wrong, the allowed range and how to mend it; what it repeats of the input comes without the
 *     characters that steer a terminal or turn the direction of writing
 */
public record Fault(String field, String sentence) {
    public Fault {
        sentence = Printable.of(sentence);
    }
}
