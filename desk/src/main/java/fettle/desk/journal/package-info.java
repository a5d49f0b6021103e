/** The journal of every change, and undo. */
@NullMarked
package fettle.desk.journal;

import org.jspecify.annotations.NullMarked;
