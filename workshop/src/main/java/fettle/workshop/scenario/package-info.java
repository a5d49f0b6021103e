/**
 * Scenario files: cells, packs and a protocol as JSON, read into what the engine simulates.
 *
 * <p>Described for its writers in docs/scenario-file.md. Keys carry their units; discharge is positive in results.
 */
@NullMarked
package fettle.workshop.scenario;

import org.jspecify.annotations.NullMarked;
