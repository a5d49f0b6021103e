package fettle.engine.supply.wire;

import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;

/**
 * A copper conductor by its section.
 *
 * <p>Formula: AWG n has d = 0.127 mm · 92^((36 − n) / 39) (ASTM B258, formula from memory, checked against a published
 * table); resistance per metre ρ(T) / A with ρ = 17.241 nΩ·m at 20 °C (IEC 60028, 100 % IACS) and 0.00393 per kelvin.
 * <p>Holds for: solid copper, the lower bound of a stranded one. A fine-stranded conductor of IEC 60228 class 5 or 6 may
 * have up to {@value #STRANDED_MOST} times as much.
 *
 * @param areaSquareMetres section [m²], AWG 40 to 100 mm²
 */
public record Conductor(double areaSquareMetres) {
    /** Class 5 maximum of IEC 60228 over solid copper, the largest from 0.5 to 25 mm². */
    public static final double STRANDED_MOST = 1.16;

    private static final double RESISTIVITY = 17.241e-9;
    private static final double PER_KELVIN = 0.00393; // from memory
    private static final double TWENTY_CELSIUS = TradeUnit.CELSIUS.toSi(20);
    private static final double SQUARE_MILLIMETRE = 1e-6;

    public Conductor {
        double square = areaSquareMetres / SQUARE_MILLIMETRE;
        if (!(square >= 0.004 && square <= 100)) {
            throw new InputException("wire", "wire section is outside 0.004 to 100 mm². Give mm² or an AWG number.");
        }
    }

    /** A conductor by its AWG number, 0 … 40. */
    public static Conductor awg(int number) {
        if (number < 0 || number > 40) {
            throw new InputException(
                    "awg", "wire is AWG " + number + "; expected 0 to 40. A larger number is thinner.");
        }
        double diameter = 0.127e-3 * Math.pow(92, (36 - number) / 39.0);
        return new Conductor(Math.PI * diameter * diameter / 4);
    }

    /** A conductor by its section [mm²]. */
    public static Conductor ofSquareMillimetres(double square) {
        return new Conductor(square * SQUARE_MILLIMETRE);
    }

    /** Resistance per metre of one solid conductor at its own temperature [Ω/m]. */
    public double ohmsPerMetre(double kelvins) {
        new Faults()
                .range("wire", "wire temperature", kelvins, TradeUnit.CELSIUS, -40, 200, "Give the copper's own.")
                .refuse();
        return RESISTIVITY * (1 + PER_KELVIN * (kelvins - TWENTY_CELSIUS)) / areaSquareMetres;
    }
}
