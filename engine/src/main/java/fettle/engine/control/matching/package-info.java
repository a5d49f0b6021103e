/** Bringing two surfaces with unlike geometry to the same angles: end points, centre and curve points. */
@NullMarked
package fettle.engine.control.matching;

import org.jspecify.annotations.NullMarked;
