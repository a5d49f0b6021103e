package fettle.engine.trace.register;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The word registers, with their command codes. */
public enum Register {
    MANUFACTURER_ACCESS(0x00, "ManufacturerAccess", Packing.NUMBER),
    REMAINING_CAPACITY_ALARM(0x01, "RemainingCapacityAlarm", Packing.CAPACITY),
    REMAINING_TIME_ALARM(0x02, "RemainingTimeAlarm", Packing.MINUTES),
    BATTERY_MODE(0x03, "BatteryMode", Packing.MODE),
    AT_RATE(0x04, "AtRate", Packing.RATE),
    AT_RATE_TIME_TO_FULL(0x05, "AtRateTimeToFull", Packing.MINUTES_TO_FULL),
    AT_RATE_TIME_TO_EMPTY(0x06, "AtRateTimeToEmpty", Packing.MINUTES_TO_EMPTY),
    AT_RATE_OK(0x07, "AtRateOK", Packing.NUMBER),
    TEMPERATURE(0x08, "Temperature", Packing.TEMPERATURE),
    VOLTAGE(0x09, "Voltage", Packing.VOLTAGE),
    CURRENT(0x0A, "Current", Packing.CURRENT),
    AVERAGE_CURRENT(0x0B, "AverageCurrent", Packing.CURRENT),
    MAX_ERROR(0x0C, "MaxError", Packing.PERCENT),
    RELATIVE_STATE_OF_CHARGE(0x0D, "RelativeStateOfCharge", Packing.PERCENT),
    ABSOLUTE_STATE_OF_CHARGE(0x0E, "AbsoluteStateOfCharge", Packing.PERCENT),
    REMAINING_CAPACITY(0x0F, "RemainingCapacity", Packing.CAPACITY),
    FULL_CHARGE_CAPACITY(0x10, "FullChargeCapacity", Packing.CAPACITY),
    RUN_TIME_TO_EMPTY(0x11, "RunTimeToEmpty", Packing.MINUTES_TO_EMPTY),
    AVERAGE_TIME_TO_EMPTY(0x12, "AverageTimeToEmpty", Packing.MINUTES_TO_EMPTY),
    AVERAGE_TIME_TO_FULL(0x13, "AverageTimeToFull", Packing.MINUTES_TO_FULL),
    CHARGING_CURRENT(0x14, "ChargingCurrent", Packing.ASKED_CURRENT),
    CHARGING_VOLTAGE(0x15, "ChargingVoltage", Packing.ASKED_VOLTAGE),
    BATTERY_STATUS(0x16, "BatteryStatus", Packing.STATUS),
    CYCLE_COUNT(0x17, "CycleCount", Packing.CYCLES),
    DESIGN_CAPACITY(0x18, "DesignCapacity", Packing.CAPACITY),
    DESIGN_VOLTAGE(0x19, "DesignVoltage", Packing.VOLTAGE),
    SPECIFICATION_INFO(0x1A, "SpecificationInfo", Packing.SPECIFICATION),
    MANUFACTURE_DATE(0x1B, "ManufactureDate", Packing.DATE),
    SERIAL_NUMBER(0x1C, "SerialNumber", Packing.NUMBER);

    /** How a word holds its value. */
    enum Packing {
        NUMBER,
        CAPACITY,
        RATE,
        MINUTES,
        MINUTES_TO_EMPTY,
        MINUTES_TO_FULL,
        MODE,
        TEMPERATURE,
        VOLTAGE,
        CURRENT,
        ASKED_VOLTAGE,
        ASKED_CURRENT,
        PERCENT,
        STATUS,
        CYCLES,
        SPECIFICATION,
        DATE
    }

    private final int command;
    private final String label;
    private final Packing packing;

    Register(int command, String label, Packing packing) {
        this.command = command;
        this.label = label;
        this.packing = packing;
    }

    /** Its name in the specification. */
    public String label() {
        return label;
    }

    Packing packing() {
        return packing;
    }

    /** The register named so: by its name in any case or its command code, e.g. {@code 0x09}. */
    public static Optional<Register> named(String written) {
        String name = written.strip();
        return Arrays.stream(values())
                .filter(register -> register.label.equalsIgnoreCase(name)
                        || String.format(Locale.ROOT, "0x%02X", register.command)
                                .equalsIgnoreCase(name))
                .findFirst();
    }
}
