package fettle.engine.units;

/**
 * One thing wrong with an input.
 *
 * @param field key of the field at fault, as forms and JSON name it
 * @param sentence what is wrong, the allowed range and how to mend it
 */
public record Fault(String field, String sentence) {}
