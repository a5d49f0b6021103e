/** The place Traces: logs taken on, listed, and drawn with what was found in them. */
@NullMarked
package fettle.desk.trace;

import org.jspecify.annotations.NullMarked;
