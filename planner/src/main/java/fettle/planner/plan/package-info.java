/**
 * The answer: what is charged when and where, which pack flies which run, what each goal comes to and how sure that is.
 */
@NullMarked
package fettle.planner.plan;

import org.jspecify.annotations.NullMarked;
