/**
 * Helicopter swashplates on three servos. Azimuth from the nose, clockwise seen from above; plate height up positive, tilt
 * forward and to the right positive. Servo links stand upright; their lean under tilt is left out.
 */
@NullMarked
package fettle.engine.control.swashplate;

import org.jspecify.annotations.NullMarked;
