/** How one reader wants pages: colours, units, clock. */
@NullMarked
package fettle.desk.preference;

import org.jspecify.annotations.NullMarked;
