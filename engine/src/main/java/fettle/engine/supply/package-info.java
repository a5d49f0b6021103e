/** What feeds a pack: chargers, their ports and the sources behind them. */
@NullMarked
package fettle.engine.supply;

import org.jspecify.annotations.NullMarked;
