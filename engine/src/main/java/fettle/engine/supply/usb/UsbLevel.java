package fettle.engine.supply.usb;

import fettle.engine.working.CitationStatus;

/**
 * The power levels of USB.
 *
 * @see "tables of a connector maker (JAE 2025), a hub maker (Cambrionix) and an encyclopedia's USB Power Delivery entry; the
 *     USB-IF specifications were not open to read; 28 and 36 V from memory"
 */
public enum UsbLevel {
    USB2_LOW("USB 2.0 low power (1 unit load)", 5, 0.1),
    USB2_HIGH("USB 2.0 high power", 5, 0.5),
    USB3_SINGLE("USB 3.x high power, single lane", 5, 0.9),
    USB3_DUAL("USB 3.x high power, dual lane", 5, 1.5),
    BATTERY_CHARGING("Battery Charging 1.2", 5, 1.5),
    TYPE_C_1A5("Type-C current 1.5 A", 5, 1.5),
    TYPE_C_3A("Type-C current 3 A", 5, 3),
    PD_5("PD fixed 5 V", 5, 3),
    PD_9("PD fixed 9 V", 9, 3),
    PD_15("PD fixed 15 V", 15, 3),
    PD_20_3A("PD fixed 20 V, 3 A cable", 20, 3),
    PD_20_5A("PD fixed 20 V, 5 A cable", 20, 5),
    PD_28("PD extended 28 V", 28, 5),
    PD_36("PD extended 36 V", 36, 5),
    PD_48("PD extended 48 V", 48, 5);

    private final String label;
    private final double volts;
    private final double amps;

    UsbLevel(String label, double volts, double amps) {
        this.label = label;
        this.volts = volts;
        this.amps = amps;
    }

    public String label() {
        return label;
    }

    public double volts() {
        return volts;
    }

    public double watts() {
        return volts * amps;
    }

    /** More than 3 A needs a cable marked for 5 A. */
    public boolean needsFiveAmpCable() {
        return amps > 3;
    }

    public CitationStatus status() {
        return this == PD_28 || this == PD_36 ? CitationStatus.FROM_MEMORY : CitationStatus.PUBLISHED;
    }
}
