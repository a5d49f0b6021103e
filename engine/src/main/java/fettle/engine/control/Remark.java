package fettle.engine.control;

/**
 * A doubt or a hint beside an answer.
 *
 * @param id stable id of its kind, e.g. {@code near-toggle}
 * @param statement what was seen, with figures and the limit
 * @param advice what to do about it
 */
public record Remark(String id, String statement, String advice) {}
