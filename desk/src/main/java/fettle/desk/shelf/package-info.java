/** Checking a shelf of packs in one sitting. */
@NullMarked
package fettle.desk.shelf;

import org.jspecify.annotations.NullMarked;
