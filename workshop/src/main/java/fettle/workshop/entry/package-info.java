/** The entry line: a check, a charge or a run typed on one line, read into a record or into problems with their columns. */
@NullMarked
package fettle.workshop.entry;

import org.jspecify.annotations.NullMarked;
