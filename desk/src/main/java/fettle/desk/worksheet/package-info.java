/** The place Worksheets: what-if sums, each a form and its sheet on one page. */
@NullMarked
package fettle.desk.worksheet;

import org.jspecify.annotations.NullMarked;
