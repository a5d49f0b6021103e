/**
 * How long a timer is set: the time at which the weakest cell is at its reserve or falls to its under-load minimum,
 * whichever comes first, at a stated risk that a run comes there sooner.
 *
 * <p>Two things are uncertain: what the next run draws, told from earlier runs, and what the pack can give, told by the
 * doubts of its model. Times are taken as lognormal; few runs widen the answer as Student's t asks for. Leaves out: a craft
 * or a way of running that changes, which earlier runs cannot tell; and a pack that fails.
 */
@NullMarked
package fettle.planner.timer;

import org.jspecify.annotations.NullMarked;
