/**
 * What a pack's own records say of its health: capacity, resistance, leakage, and when it will have to retire.
 *
 * <p>Each answer is an estimate with a two-sided interval and names the evidence that counts most. Left out: anything that
 * needs the cell opened.
 */
@NullMarked
package fettle.engine.health;

import org.jspecify.annotations.NullMarked;
