package fettle.engine.control.load;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Air of the International Standard Atmosphere.
 *
 * <p>Formula: T = 288.15 − 0.0065·H, p = 101 325·(T / 288.15)^(g / (R·0.0065)), ρ = p / (R·T); ISO 2533:1975. With a
 * temperature of the day the pressure stays that of the altitude.
 * <p>Leaves out: humidity (lowers the density by up to 2 % on a hot humid day, from memory) and the day's weather.
 */
public final class StandardAir {
    private static final double SEA_LEVEL_KELVINS = 288.15;
    private static final double SEA_LEVEL_PASCALS = 101_325;
    private static final double KELVINS_PER_METRE = 0.0065;
    private static final double GRAVITY = 9.80665;
    private static final double GAS_CONSTANT = 287.05287;

    private StandardAir() {}

    /**
     * Density of air [kg/m³].
     *
     * @param altitudeMetres geopotential altitude [m], −1000 … 5000
     * @param kelvins temperature of the day [K], −40 … 55 °C; {@code null} for the standard's own at that altitude
     */
    public static double density(double altitudeMetres, @Nullable Double kelvins) {
        new Faults()
                .range("altitude", "altitude", altitudeMetres, TradeUnit.METRE, -1000, 5000, "Give it above sea level.")
                .range("air", "air temperature", kelvins, TradeUnit.CELSIUS, -40, 55, "Give it in °C.")
                .refuse();
        double standard = SEA_LEVEL_KELVINS - KELVINS_PER_METRE * altitudeMetres;
        double exponent = GRAVITY / (GAS_CONSTANT * KELVINS_PER_METRE);
        double pascals = SEA_LEVEL_PASCALS * Math.pow(standard / SEA_LEVEL_KELVINS, exponent);
        return pascals / (GAS_CONSTANT * (kelvins == null ? standard : kelvins));
    }
}
