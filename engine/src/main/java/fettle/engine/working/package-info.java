/** How an answer was reached: steps with formula, inputs and citation, shown unchanged by every edge. */
@NullMarked
package fettle.engine.working;

import org.jspecify.annotations.NullMarked;
