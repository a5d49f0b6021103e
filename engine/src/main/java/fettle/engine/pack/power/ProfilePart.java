package fettle.engine.pack.power;

import fettle.engine.units.Faults;
import java.util.List;

/**
 * One part of a run profile.
 *
 * @param amps current [A], ≥ 0; 0 is a pause
 * @param seconds how long it lasts [s], &gt; 0
 */
public record ProfilePart(double amps, double seconds) {
    static void refuseUnlessSound(List<ProfilePart> parts) {
        Faults faults = new Faults();
        for (int part = 0; part < parts.size(); part++) {
            ProfilePart one = parts.get(part);
            if (!(one.amps >= 0) || Double.isInfinite(one.amps)) {
                faults.add("load", "part " + (part + 1) + ": current is " + one.amps + " A; expected 0 A or more.");
            }
            if (!(one.seconds > 0) || Double.isInfinite(one.seconds)) {
                faults.add("load", "part " + (part + 1) + " lasts " + one.seconds + " s; expected more than 0 s.");
            }
        }
        if (parts.stream().noneMatch(part -> part.amps > 0)) {
            faults.add("load", "the profile draws no current; expected at least one part of more than 0 A.");
        }
        faults.refuse();
    }
}
