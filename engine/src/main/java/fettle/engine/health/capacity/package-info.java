/**
 * Total capacity from pairs of (change of rest charge, charge counted or noted), both uncertain.
 *
 * <p>Both members of a pair are positive when charge goes in; capacity is charge from empty to full [C]. Method: weighted
 * total least squares, G. L. Plett, J. Power Sources 196 (2011) 2319-2331. Left out: fading within one pair, the change of
 * capacity with temperature.
 */
@NullMarked
package fettle.engine.health.capacity;

import org.jspecify.annotations.NullMarked;
