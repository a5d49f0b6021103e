/** Plans of an outing: which pack runs what, what is charged when and where, and how long a timer is set. */
@NullMarked
package fettle.planner;

import org.jspecify.annotations.NullMarked;
