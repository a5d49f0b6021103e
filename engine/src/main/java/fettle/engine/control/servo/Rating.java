package fettle.engine.control.servo;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What a servo does at one voltage, by its maker's sheet or by measurement.
 *
 * @param volts supply at the servo [V], 2 … 60 V
 * @param stallNewtonMetres torque at which it stops [N·m], &gt; 0
 * @param radiansPerSecond speed without load [rad/s]; {@code null} if not stated
 * @param idleAmps current at rest without load [A]; {@code null} if not stated
 * @param movingAmps current while it moves without load [A]; {@code null} if not stated
 * @param stallAmps current while it is stalled [A]; {@code null} if not stated
 */
public record Rating(
        double volts,
        double stallNewtonMetres,
        @Nullable Double radiansPerSecond,
        @Nullable Double idleAmps,
        @Nullable Double movingAmps,
        @Nullable Double stallAmps) {
    private static final double SIXTY_DEGREES = Math.PI / 3;
    private static final String SHEET = "See the servo's sheet.";

    public Rating {
        Faults faults = new Faults();
        faults.range("volts", "servo voltage", volts, TradeUnit.VOLT, 2, 60, SHEET);
        faults.range(
                "stallTorque",
                "stall torque",
                stallNewtonMetres,
                TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
                0.05,
                1000,
                SHEET + " kg·cm and oz·in differ by 14.");
        if (radiansPerSecond != null && !(radiansPerSecond >= 0.5 && radiansPerSecond <= 60)) {
            faults.add(
                    "speed",
                    "servo speed is outside 0.02 to 2 seconds for 60 degrees. " + SHEET + " It is a time, not a rate.");
        }
        faults.range("idleAmps", "current at rest", idleAmps, TradeUnit.AMPERE, 0, 5, SHEET);
        faults.range("movingAmps", "moving current", movingAmps, TradeUnit.AMPERE, 0, 50, SHEET);
        faults.range("stallAmps", "stall current", stallAmps, TradeUnit.AMPERE, 0, 100, SHEET);
        if (idleAmps != null && stallAmps != null && idleAmps > stallAmps) {
            faults.add("stallAmps", "stall current is below the current at rest; check that they are not swapped.");
        }
        faults.refuse();
    }

    /** Speed [rad/s] for the time a sheet states for sixty degrees [s]. */
    public static double radiansPerSecond(double secondsForSixtyDegrees) {
        return SIXTY_DEGREES / secondsForSixtyDegrees;
    }
}
