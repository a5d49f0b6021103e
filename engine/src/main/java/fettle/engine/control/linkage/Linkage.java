package fettle.engine.control.linkage;

import java.util.List;

/** What joins a servo to a surface. */
public sealed interface Linkage permits FourBar, PullPull, TorqueRod {
    /**
     * The linkage at a servo angle.
     *
     * @param servoRadians servo angle from neutral [rad]
     * @throws fettle.engine.units.InputException if the linkage cannot close there; says how far it reaches
     */
    Position at(double servoRadians);

    /**
     * The servo angle that gives a surface angle.
     *
     * @param surfaceRadians surface angle from neutral [rad]
     * @throws fettle.engine.units.InputException if the surface cannot get there; says how far it reaches
     */
    double servoRadians(double surfaceRadians);

    /**
     * How far the surface can be moved with the servo held, at one servo angle [rad].
     *
     * @param servoRadians servo angle from neutral [rad]
     * @param jointPlayMetres play of all joints along the rod [m], ≥ 0
     */
    double playRadians(double servoRadians, double jointPlayMetres);

    /** Toggles and dead centres on either side of neutral, the nearest first. */
    List<TravelLimit> limits();

    /** The travel between the nearest limits on either side. */
    default TravelRange range() {
        return TravelRange.of(limits());
    }
}
