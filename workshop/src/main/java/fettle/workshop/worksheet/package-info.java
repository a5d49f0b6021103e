/** Worksheets: what-if sums that need no record. Fields as typed in, figures with their ± and working out. */
@NullMarked
package fettle.workshop.worksheet;

import org.jspecify.annotations.NullMarked;
