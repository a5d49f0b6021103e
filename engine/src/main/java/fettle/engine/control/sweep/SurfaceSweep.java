package fettle.engine.control.sweep;

import fettle.engine.units.Faults;
import java.time.Instant;

/**
 * A sweep of one surface of a craft.
 *
 * @param craft the craft's name
 * @param surface the surface, e.g. {@code left aileron}
 * @param takenAt when
 * @param fileName the file it was read from
 * @param sweep its readings
 */
public record SurfaceSweep(String craft, String surface, Instant takenAt, String fileName, Sweep sweep) {
    public SurfaceSweep {
        Faults faults = new Faults();
        if (craft.isBlank()) {
            faults.add("craft", "the sweep names no craft. Say which craft it was taken on.");
        }
        if (surface.isBlank()) {
            faults.add("surface", "the sweep names no surface. Say which one, e.g. left aileron.");
        }
        faults.refuse();
    }
}
