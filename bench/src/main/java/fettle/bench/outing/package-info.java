/** Measures the outing planner beside a plain rule and an independent general-purpose solver. */
@NullMarked
package fettle.bench.outing;

import org.jspecify.annotations.NullMarked;
