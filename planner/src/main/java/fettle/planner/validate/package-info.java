/**
 * Checks a plan against the problem alone, at every minute. Shares no code with the search.
 */
@NullMarked
package fettle.planner.validate;

import org.jspecify.annotations.NullMarked;
