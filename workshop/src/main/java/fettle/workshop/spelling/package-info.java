/** How like two spellings are, so that a slip of the keyboard can be answered with what was meant. */
@NullMarked
package fettle.workshop.spelling;

import org.jspecify.annotations.NullMarked;
