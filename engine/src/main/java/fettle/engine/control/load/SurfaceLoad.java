package fettle.engine.control.load;

import fettle.engine.units.Estimate;

/** What loads a surface about its hinge. */
public sealed interface SurfaceLoad permits AirLoad, EnteredLoad {
    /** Moment to design for at a surface angle [N·m], ≥ 0: on the heavy side of what is expected. */
    double designNewtonMetres(double surfaceRadians);

    /** Moment to expect at a surface angle [N·m], ≥ 0, with ±. */
    Estimate expectedNewtonMetres(double surfaceRadians);
}
