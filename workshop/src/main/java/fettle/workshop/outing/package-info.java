/** Outings: times as people write them, the problem a plan is made from, the plan as it is kept, and the reasons behind it. */
@NullMarked
package fettle.workshop.outing;

import org.jspecify.annotations.NullMarked;
