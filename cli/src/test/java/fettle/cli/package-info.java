/** The command line, run in-process with its own writers. */
@NullMarked
package fettle.cli;

import org.jspecify.annotations.NullMarked;
