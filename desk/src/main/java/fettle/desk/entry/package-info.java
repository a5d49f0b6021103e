/** The entry line: what was understood, what was not and where, and saving it. */
@NullMarked
package fettle.desk.entry;

import org.jspecify.annotations.NullMarked;
