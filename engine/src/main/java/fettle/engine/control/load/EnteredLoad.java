package fettle.engine.control.load;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * A moment entered or measured, the same at every angle: steering of a car, a boat's rudder.
 *
 * @param moment moment about the surface's own axis [N·m], with ±
 */
public record EnteredLoad(Estimate moment) implements SurfaceLoad {
    private static final double DEVIATIONS = 2;

    public EnteredLoad {
        new Faults()
                .range(
                        "moment",
                        "moment",
                        moment.value(),
                        TradeUnit.NEWTON_METRE,
                        0,
                        200,
                        "Measure it with a spring scale: force times arm.")
                .refuse();
    }

    /** A moment measured to a share of itself. */
    public static EnteredLoad measured(double newtonMetres, double shareUncertain) {
        return new EnteredLoad(Estimate.ofIndependent(
                newtonMetres, List.of(new Driver("measurement", newtonMetres * shareUncertain))));
    }

    @Override
    public double designNewtonMetres(double surfaceRadians) {
        return moment.value() + DEVIATIONS * moment.standardDeviation();
    }

    @Override
    public Estimate expectedNewtonMetres(double surfaceRadians) {
        return moment;
    }
}
