/** The first run: from an empty book to one real pack checked. */
@NullMarked
package fettle.desk.start;

import org.jspecify.annotations.NullMarked;
