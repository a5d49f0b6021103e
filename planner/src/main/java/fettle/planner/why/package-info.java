/**
 * Says why a plan leaves something out, and what would make it possible.
 */
@NullMarked
package fettle.planner.why;

import org.jspecify.annotations.NullMarked;
