package fettle.engine.travel;

import fettle.engine.working.Citation;
import java.time.LocalDate;

/**
 * One rule of a table.
 *
 * @param statement what it asks, in our words
 * @param dated the day of the source it was read in
 * @param citation where it was read
 */
public record TravelRule(String statement, LocalDate dated, Citation citation) {}
