/**
 * Spare packs that feed USB devices: how many charges, at which level, what the converter loses, and when to stop.
 *
 * <p>Leaves out: the converter's own current while nothing charges, and that a device takes less as it fills.
 */
@NullMarked
package fettle.engine.supply.usb;

import org.jspecify.annotations.NullMarked;
