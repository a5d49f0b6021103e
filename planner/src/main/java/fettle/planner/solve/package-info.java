/**
 * Finds the plan: a first one by inserting one pack's day after another, then better ones, beside bounds that say how far the best may be off.
 */
@NullMarked
package fettle.planner.solve;

import org.jspecify.annotations.NullMarked;
