package fettle.engine.supply.usb;

import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;

/**
 * A device fed from a pack through a converter.
 *
 * @param deviceJoules energy the device's own battery holds [J]
 * @param deviceEfficiency share of what arrives that it stores, 0.3 … 1
 * @param converterEfficiency share of the pack's energy the converter passes on, 0.3 … 1
 * @param level the level it charges at
 */
public record UsbFeed(double deviceJoules, double deviceEfficiency, Estimate converterEfficiency, UsbLevel level) {
    public UsbFeed {
        Faults faults = new Faults();
        faults.range("device", "energy of the device", deviceJoules, TradeUnit.WATT_HOUR, 0.1, 1000, "Give it in Wh.");
        faults.range(
                "device-efficiency",
                "device's efficiency",
                deviceEfficiency,
                TradeUnit.PERCENT,
                30,
                100,
                "Usual: 85 %.");
        faults.range(
                "converter",
                "converter's efficiency",
                converterEfficiency.value(),
                TradeUnit.PERCENT,
                30,
                100,
                "Usual: 85 to 95 %.");
        faults.refuse();
    }

    /** Energy one full charge takes from the pack [J]: device / (converter · device's efficiency). */
    public double joulesPerCharge() {
        return deviceJoules / (converterEfficiency.value() * deviceEfficiency);
    }

    /** Full charges out of an energy [J]. */
    public double fullCharges(double joules) {
        return joules / joulesPerCharge();
    }

    /** Power drawn from the pack while it charges [W]. */
    public double packWatts() {
        return level.watts() / converterEfficiency.value();
    }

    /** Heat of the converter [W]. */
    public double heatWatts() {
        return packWatts() - level.watts();
    }

    /** Shortest time of a full charge [s]: the level given throughout. */
    public double secondsPerCharge() {
        return deviceJoules / (deviceEfficiency * level.watts());
    }
}
