/** What charging, storing, balancing and joining packs comes to, simulated: times, charge, heat, and the limit that binds. */
@NullMarked
package fettle.engine.charge.answer;

import org.jspecify.annotations.NullMarked;
