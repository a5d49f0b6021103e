package fettle.engine.cell.circuit;

/**
 * How resistance grows in the cold.
 *
 * <p>Formula: R(T) = R(25 °C) · exp(Ea/Rg · (1/T − 1/298.15 K)).
 *
 * <p>Holds for about 0 to 60 °C; the line bends upward in the cold.
 *
 * @param activationJoulesPerMole activation energy Ea [J/mol], ≥ 0; 0 for none
 */
public record Arrhenius(double activationJoulesPerMole) {
    /** Molar gas constant [J/(mol·K)], CODATA 2018, exact. */
    public static final double GAS_CONSTANT = 8.314462618;

    /** The temperature resistances are given at [K]. */
    public static final double REFERENCE_KELVINS = 298.15;

    /** No influence of temperature. */
    public static final Arrhenius NONE = new Arrhenius(0);

    /**
     * Whole lithium cells near room temperature: 20 to 25 kJ/mol.
     *
     * @see "Kollmeyer 2018, 18650PF pulses at 0 and 25 °C: 19.8 to 23.6 kJ/mol; Wiggins et al., 33 Ah pouch at 10 and 25 °C:
     *     19.4 to 23.7 kJ/mol"
     */
    public static final Arrhenius WHOLE_CELL = new Arrhenius(22_000);

    /** Factor on the resistance at 25 °C, for a temperature [K]. */
    public double factor(double kelvins) {
        return Math.exp(activationJoulesPerMole / GAS_CONSTANT * (1 / kelvins - 1 / REFERENCE_KELVINS));
    }

    /** Change of the factor per kelvin, relative to the factor itself [1/K]. */
    public double relativeSlope(double kelvins) {
        return -activationJoulesPerMole / (GAS_CONSTANT * kelvins * kelvins);
    }
}
