/** What every page has: the sheet around it, the entry line, the message of the last change, printed figures. */
@NullMarked
package fettle.desk.frame;

import org.jspecify.annotations.NullMarked;
