/** Keeps the desk to its own machine and its own pages: host, origin and security headers. */
@NullMarked
package fettle.desk.guard;

import org.jspecify.annotations.NullMarked;
