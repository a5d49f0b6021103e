package fettle.engine.pack;

import fettle.engine.working.Working;

/**
 * One reasoned statement about a pack.
 *
 * @param id stable id of its kind, e.g. {@code over-discharge}
 * @param standing the best standing a pack with this finding can have
 * @param statement what was found, with the value ± and the limit
 * @param advice what to do
 * @param working how it was reached
 */
public record Finding(String id, Standing standing, String statement, String advice, Working working) {}
