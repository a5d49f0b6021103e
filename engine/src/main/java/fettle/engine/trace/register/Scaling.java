package fettle.engine.trace.register;

/**
 * What the other registers must be read by.
 *
 * @param voltageFactor 10^VScale of SpecificationInfo
 * @param currentFactor 10^IPScale of SpecificationInfo, for currents and capacities
 * @param capacity what capacities count, bit 15 of BatteryMode
 */
public record Scaling(int voltageFactor, int currentFactor, Capacity capacity) {
    public static final Scaling PLAIN = new Scaling(1, 1, Capacity.CHARGE);

    private static final int CAPACITY_MODE = 1 << 15;
    private static final int VOLTAGE_SHIFT = 8;
    private static final int CURRENT_SHIFT = 12;

    /** What capacities count. */
    public enum Capacity {
        CHARGE,
        ENERGY
    }

    /** The scaling that two raw words say. */
    public static Scaling of(int specificationInfo, int batteryMode) {
        return new Scaling(
                tens(specificationInfo >> VOLTAGE_SHIFT),
                tens(specificationInfo >> CURRENT_SHIFT),
                (batteryMode & CAPACITY_MODE) == 0 ? Capacity.CHARGE : Capacity.ENERGY);
    }

    private static int tens(int nibble) {
        int factor = 1;
        for (int i = 0; i < (nibble & 0xF); i++) {
            factor *= 10;
        }
        return factor;
    }
}
