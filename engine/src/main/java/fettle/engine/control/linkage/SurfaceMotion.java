package fettle.engine.control.linkage;

/** A surface as the transmitter sees it: pulses in, angles out, whether worked out or measured. */
public interface SurfaceMotion {
    /**
     * Surface angle at a pulse [rad], up positive.
     *
     * @param pulseSeconds pulse [s]
     * @throws fettle.engine.units.InputException outside what the surface can do or was measured over
     */
    double surfaceRadians(double pulseSeconds);

    /**
     * The pulse that gives a surface angle [s].
     *
     * @param surfaceRadians surface angle [rad], up positive
     * @throws fettle.engine.units.InputException if the surface does not get there
     */
    double pulseSeconds(double surfaceRadians);

    /** From hinge line to trailing edge [m]. */
    double chordMetres();

    /** Movement of the trailing edge at a pulse [m], up positive. */
    default double edgeMetres(double pulseSeconds) {
        return TrailingEdge.movementMetres(chordMetres(), surfaceRadians(pulseSeconds));
    }
}
