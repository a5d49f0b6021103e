package fettle.engine.control.sweep;

/**
 * A stretch inside the free travel where the servo works harder.
 *
 * @param lowestSeconds where it begins [s]
 * @param highestSeconds where it ends [s]
 * @param riseAmps how far above the travel around it [A]
 */
public record HotSpot(double lowestSeconds, double highestSeconds, double riseAmps) {}
