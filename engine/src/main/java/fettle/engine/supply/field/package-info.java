/**
 * What a field battery or a generator can feed: an energy ledger of the day, from its charge down to its reserve.
 *
 * <p>Lead-acid gives less the harder it is drawn (Peukert); lithium counts in full at any current. Leaves out: recovery
 * between loads, temperature, and ageing beyond the capacity typed.
 */
@NullMarked
package fettle.engine.supply.field;

import org.jspecify.annotations.NullMarked;
