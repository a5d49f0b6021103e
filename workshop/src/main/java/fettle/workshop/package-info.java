/** The use cases: each joins book and engine into one answer. Desk and command line act only through these. */
@NullMarked
package fettle.workshop;

import org.jspecify.annotations.NullMarked;
