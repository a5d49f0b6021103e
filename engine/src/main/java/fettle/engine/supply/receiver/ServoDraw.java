package fettle.engine.supply.receiver;

import fettle.engine.supply.wire.Lead;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * One servo as the supply sees it.
 *
 * @param name its place, e.g. {@code left aileron}
 * @param idleAmps at rest [A]
 * @param movingAmps while it moves [A]
 * @param stallAmps stalled [A]
 * @param basis where these come from
 * @param lead from the receiver to the servo
 */
public record ServoDraw(String name, double idleAmps, double movingAmps, double stallAmps, Basis basis, Lead lead) {
    /** Share of the time, or of the servos, that moves in cruise; Fettle's choice. */
    private static final double CRUISE_MOVING = 0.25;

    /** Share of the way from moving to stall that air loads take in a hard manoeuvre; Fettle's choice. */
    private static final double HARD_LOAD = 0.3;

    public ServoDraw {
        Faults faults = new Faults();
        String at = " of " + name;
        faults.range("idleAmps", "current at rest" + at, idleAmps, TradeUnit.AMPERE, 0, 5, "Measure it.");
        faults.range("movingAmps", "moving current" + at, movingAmps, TradeUnit.AMPERE, 0, 50, "Measure it.");
        faults.range("stallAmps", "stall current" + at, stallAmps, TradeUnit.AMPERE, 0.02, 100, "See its sheet.");
        if (!(idleAmps <= movingAmps && movingAmps <= stallAmps)) {
            faults.add(
                    "stallAmps",
                    "currents" + at + " do not rise from rest to moving to stall; check that none are swapped.");
        }
        faults.refuse();
    }

    double cruiseAmps() {
        return idleAmps + CRUISE_MOVING * (movingAmps - idleAmps);
    }

    double hardAmps() {
        return movingAmps + HARD_LOAD * (stallAmps - movingAmps);
    }
}
