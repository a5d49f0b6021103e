package fettle.engine.cell.circuit;

/**
 * A resistor with a capacitor across it: polarisation that builds up with time constant R·C.
 *
 * @param ohms resistance at 25 °C [Ω], ≥ 0; 0 switches the pair off
 * @param farads capacitance [F], > 0, taken as independent of temperature
 */
public record RcPair(double ohms, double farads) {
    /** No polarisation. */
    public static final RcPair NONE = new RcPair(0, 1);

    /** Time constant at 25 °C [s]. */
    public double seconds() {
        return ohms * farads;
    }

    /** The same time constant with another resistance. */
    public static RcPair ofTime(double ohms, double seconds) {
        return ohms == 0 ? NONE : new RcPair(ohms, seconds / ohms);
    }
}
