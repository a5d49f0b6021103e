package fettle.engine.cell.circuit;

/**
 * A cell as one lump of heat.
 *
 * @param joulesPerKelvin heat capacity [J/K], > 0; infinite holds the temperature
 * @param wattsPerKelvin heat transfer to the surroundings [W/K], ≥ 0; 0 is adiabatic
 */
public record ThermalNode(double joulesPerKelvin, double wattsPerKelvin) {
    /** Temperature never changes. */
    public static final ThermalNode ISOTHERMAL = new ThermalNode(Double.POSITIVE_INFINITY, 0);

    /** Specific heat of a pouch cell [J/(kg·K)]: 900 to 1100, from memory. */
    public static final double POUCH_JOULES_PER_KILOGRAM_KELVIN = 1000;

    public static ThermalNode of(double kilograms, double joulesPerKilogramKelvin, double wattsPerKelvin) {
        return new ThermalNode(kilograms * joulesPerKilogramKelvin, wattsPerKelvin);
    }

    public boolean isIsothermal() {
        return Double.isInfinite(joulesPerKelvin);
    }
}
