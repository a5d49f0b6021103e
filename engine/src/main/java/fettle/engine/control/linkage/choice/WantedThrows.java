package fettle.engine.control.linkage.choice;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * Throws to reach.
 *
 * @param upRadians trailing edge up [rad], 1° … 80°
 * @param downRadians trailing edge down [rad], 1° … 80°
 */
public record WantedThrows(double upRadians, double downRadians) {
    public WantedThrows {
        new Faults()
                .range("up", "throw up", upRadians, TradeUnit.DEGREE, 1, 80, "Give the throw without a sign.")
                .range("down", "throw down", downRadians, TradeUnit.DEGREE, 1, 80, "Give the throw without a sign.")
                .refuse();
    }

    double largestRadians() {
        return Math.max(upRadians, downRadians);
    }
}
