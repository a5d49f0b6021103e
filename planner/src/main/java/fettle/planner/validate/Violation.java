package fettle.planner.validate;

/**
 * A limit a plan breaks.
 *
 * @param rule what is broken, in a word or two
 * @param sentence where and by how much
 */
public record Violation(String rule, String sentence) {}
