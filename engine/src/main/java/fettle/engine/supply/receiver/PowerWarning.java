package fettle.engine.supply.receiver;

/**
 * Something the supply cannot bear.
 *
 * @param id stable id of its kind
 * @param statement figure, limit and scenario
 * @param advice what to do
 */
public record PowerWarning(String id, String statement, String advice) {}
