/** Outings: the list, one outing with its plan and day sheet, and what to do now and next. */
@NullMarked
package fettle.desk.outing;

import org.jspecify.annotations.NullMarked;
