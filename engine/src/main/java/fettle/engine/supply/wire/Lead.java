package fettle.engine.supply.wire;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * Two conductors side by side with their connectors.
 *
 * <p>Formula: R = 2·ℓ·r + contacts. The value is half-way between solid copper and the most a fine-stranded conductor may
 * have; its ± reaches both at two standard deviations.
 *
 * @param conductor what both conductors are
 * @param oneWayMetres length one way [m], 0 … 20
 * @param kelvins temperature of the copper [K]
 * @param contactOhms all mated pairs on the way there and back [Ω], 0 … 1; measure drop over current
 */
public record Lead(Conductor conductor, double oneWayMetres, double kelvins, double contactOhms) {
    public Lead {
        new Faults()
                .range("length", "length of the lead", oneWayMetres, TradeUnit.METRE, 0, 20, "Give it one way.")
                .range("contacts", "contact resistance", contactOhms, TradeUnit.MILLIOHM, 0, 1000, "Drop over current.")
                .refuse();
    }

    /** Both conductors, solid copper, without contacts [Ω]. */
    public double solidOhms() {
        return 2 * oneWayMetres * conductor.ohmsPerMetre(kelvins);
    }

    /** The most both conductors and the contacts may have [Ω]. */
    public double mostOhms() {
        return Conductor.STRANDED_MOST * solidOhms() + contactOhms;
    }

    /** Both conductors and contacts [Ω], with ±. */
    public Estimate ohms() {
        double spread = (Conductor.STRANDED_MOST - 1) * solidOhms();
        return Estimate.ofIndependent(
                solidOhms() + spread / 2 + contactOhms,
                List.of(new Driver("stranding not stated", spread / 4), new Driver("contacts", contactOhms / 2)));
    }

    /** Drop at a current [V], with ±. */
    public Estimate dropVolts(double amps) {
        return ohms().times(amps);
    }
}
