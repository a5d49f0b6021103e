/**
 * What each cell loses at rest, and which loses more than its neighbours.
 *
 * <p>Rates are currents [A], positive when the cell loses charge. Left out: temperature, which doubles self-discharge every
 * 10 to 20 K or so and is the same for all cells of a pack.
 */
@NullMarked
package fettle.engine.health.leakage;

import org.jspecify.annotations.NullMarked;
