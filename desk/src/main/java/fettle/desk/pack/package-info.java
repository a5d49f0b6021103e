/** One pack in full. */
@NullMarked
package fettle.desk.pack;

import org.jspecify.annotations.NullMarked;
