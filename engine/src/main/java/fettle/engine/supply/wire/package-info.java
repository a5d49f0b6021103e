/** Wires and leads: resistance, drop and loss. Copper; resistance by its own temperature, not the air's. */
@NullMarked
package fettle.engine.supply.wire;

import org.jspecify.annotations.NullMarked;
