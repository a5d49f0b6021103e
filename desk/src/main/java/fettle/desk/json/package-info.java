/** The JSON shapes shared by the HTTP API and the command line. */
@NullMarked
package fettle.desk.json;

import org.jspecify.annotations.NullMarked;
