/** Finding arm hole, horn hole and clocking for wanted throws, from the holes there are. */
@NullMarked
package fettle.engine.control.linkage.choice;

import org.jspecify.annotations.NullMarked;
