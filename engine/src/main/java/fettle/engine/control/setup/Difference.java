package fettle.engine.control.setup;

/**
 * One thing that differs between two sheets.
 *
 * @param surface which surface
 * @param what which setting, e.g. {@code centre}
 * @param before how it was, with its unit
 * @param after how it is
 */
public record Difference(String surface, String what, String before, String after) {}
