/** The spread strip: a charge axis with one tick and whisker per cell, computed here and drawn by its template. */
@NullMarked
package fettle.desk.spread;

import org.jspecify.annotations.NullMarked;
