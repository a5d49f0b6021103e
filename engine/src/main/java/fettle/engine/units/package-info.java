/** Quantities: trade units to SI and back, uncertain values, and faults of input. Everything inside Fettle is SI. */
@NullMarked
package fettle.engine.units;

import org.jspecify.annotations.NullMarked;
