/**
 * Linkages between servo and surface, in the plane of the servo arm. Servo shaft at the origin, x aft, y up,
 * counter-clockwise positive: a positive surface angle is trailing edge up. Surface angle 0 belongs to servo angle 0.
 * Rods are stiff and joints without play unless a method says otherwise.
 */
@NullMarked
package fettle.engine.control.linkage;

import org.jspecify.annotations.NullMarked;
