package fettle.engine.control.linkage;

/**
 * A surface at one pulse.
 *
 * @param pulseSeconds pulse [s]
 * @param position servo and surface angle, ratio
 * @param edgeMetres movement of the trailing edge [m], up positive
 * @param radiansPerPulseSecond how far the surface moves per pulse change [rad/s]; one µs is the finest step
 */
public record TravelPoint(double pulseSeconds, Position position, double edgeMetres, double radiansPerPulseSecond) {}
