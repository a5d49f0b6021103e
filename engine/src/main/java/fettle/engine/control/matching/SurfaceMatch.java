package fettle.engine.control.matching;

import fettle.engine.control.Caution;
import fettle.engine.working.Working;
import java.util.Comparator;
import java.util.List;

/**
 * How to bring two surfaces together.
 *
 * @param curve points of both channels, the lower end first; straight lines between
 * @param byEnds mismatch over the travel with end points and centre alone
 * @param byCurve mismatch with every point of the curve
 * @param working how it was reached
 * @param cautions what to mind when setting it
 */
public record SurfaceMatch(
        List<CurvePoint> curve,
        List<Mismatch> byEnds,
        List<Mismatch> byCurve,
        Working working,
        List<Caution> cautions) {
    public SurfaceMatch {
        curve = List.copyOf(curve);
        byEnds = List.copyOf(byEnds);
        byCurve = List.copyOf(byCurve);
        cautions = List.copyOf(cautions);
    }

    /** The largest difference of a travel. */
    public static Mismatch worst(List<Mismatch> travel) {
        return travel.stream()
                .max(Comparator.comparingDouble(mismatch -> Math.abs(mismatch.radians())))
                .orElseThrow();
    }
}
