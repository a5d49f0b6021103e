/** A pack as it is known on the bench, turned into a circuit that can be simulated, with what is uncertain about it. */
@NullMarked
package fettle.engine.pack.model;

import org.jspecify.annotations.NullMarked;
