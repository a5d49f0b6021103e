/** Labels for packs with a square code, as a page to print and as PDF. */
@NullMarked
package fettle.desk.label;

import org.jspecify.annotations.NullMarked;
