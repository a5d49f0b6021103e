/**
 * How a pack fades with use and time, and when it will cross the limits at which it retires.
 *
 * <p>Health is a share of new, 1 when new: capacity over first capacity, or 2 less resistance over first resistance. A rise
 * after rest is recovery of charge that was out of reach for a while, not healing: it is a state of its own that dies out.
 * Left out: sudden death, which no trend announces.
 */
@NullMarked
package fettle.engine.health.forecast;

import org.jspecify.annotations.NullMarked;
