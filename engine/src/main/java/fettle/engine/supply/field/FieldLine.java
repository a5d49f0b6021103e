package fettle.engine.supply.field;

/**
 * One line of the ledger.
 *
 * @param name what was fed
 * @param seconds how long it was fed [s]; less than asked for where the reserve came first
 * @param whole whether it was fed to its end
 * @param batteryJoules energy the battery gave for it [J]
 * @param lostJoules energy of that lost in inverter and charger [J]
 * @param meanAmps mean current of the battery [A]
 * @param lowestVolts lowest volts of the battery meanwhile [V]
 * @param chargeAfter charge of the battery afterwards, a fraction
 */
public record FieldLine(
        String name,
        double seconds,
        boolean whole,
        double batteryJoules,
        double lostJoules,
        double meanAmps,
        double lowestVolts,
        double chargeAfter) {}
