/**
 * Feeding a receiver and its servos. Currents positive out of the supply. Shares of current in each scenario are Fettle's
 * own choice and are replaced by measured sweeps where there are any.
 */
@NullMarked
package fettle.engine.supply.receiver;

import org.jspecify.annotations.NullMarked;
