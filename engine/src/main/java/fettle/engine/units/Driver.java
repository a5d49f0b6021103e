package fettle.engine.units;

/**
 * One cause of an estimate's uncertainty.
 *
 * @param cause what is uncertain, in the reader's words
 * @param standardDeviation its own contribution, in the unit of the estimate, ≥ 0
 */
public record Driver(String cause, double standardDeviation) {}
