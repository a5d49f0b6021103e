/**
 * An outing as people write it down, its plan as it was made, and what came of it: records only, nothing is calculated here.
 *
 * <p>Instants are UTC; an outing names the time zone its times were written in, so that a day with a clock change is as long as
 * it is.
 */
@NullMarked
package fettle.engine.outing;

import org.jspecify.annotations.NullMarked;
