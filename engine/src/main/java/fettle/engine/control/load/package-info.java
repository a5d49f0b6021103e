/**
 * What a surface asks of its servo. Moments without sign: angle of attack and deflection are taken to load the surface the
 * same way, which is the heavier case. Two-dimensional; a finite span, a gap and a balance ahead of the hinge lower the
 * moment and are not credited.
 */
@NullMarked
package fettle.engine.control.load;

import org.jspecify.annotations.NullMarked;
