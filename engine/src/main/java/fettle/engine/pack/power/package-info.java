/** What a pack can give: under a load, for how long, how much for ever, and in the cold. */
@NullMarked
package fettle.engine.pack.power;

import org.jspecify.annotations.NullMarked;
