/** What to do with a pack: charge, balance and storage tasks, each with the limit that binds. Charge current is positive here. */
@NullMarked
package fettle.engine.charge;

import org.jspecify.annotations.NullMarked;
