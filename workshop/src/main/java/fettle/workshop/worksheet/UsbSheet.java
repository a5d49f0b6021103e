package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.supply.usb.UsbAnswer;
import fettle.engine.supply.usb.UsbFeed;
import fettle.engine.supply.usb.UsbLevel;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How many charges of a device a spare pack gives. */
final class UsbSheet {
    /** A converter's efficiency as typed: data sheets give peaks, not the point it runs at. From memory. */
    private static final double CONVERTER_DEVIATION = 0.03;

    static final Worksheet WORKSHEET = new Worksheet(
            "usb",
            "Feed USB devices from a pack",
            "How many full charges before the pack is in its storage band or at its reserve, and where to stop?",
            PackFields.with(
                    WorksheetField.line("device", "Device holds", "In Wh; a phone holds about 15 to 20 Wh.", ""),
                    WorksheetField.choice(
                            "level",
                            "USB level",
                            "What converter and device agree on.",
                            UsbLevel.TYPE_C_3A.label(),
                            Arrays.stream(UsbLevel.values())
                                    .map(UsbLevel::label)
                                    .toList()),
                    WorksheetField.line("converter", "Converter's efficiency", "Typical, not its peak.", "90 %"),
                    WorksheetField.line("device-efficiency", "Device stores", "Of what arrives, as a share.", "85 %")),
            UsbSheet::answer);

    private UsbSheet() {}

    private static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        double device = typed.quantity("device", Measure.ENERGY, TradeUnit.WATT_HOUR, 3600);
        UsbLevel level = typed.read("level", () -> level(typed.word("level")), UsbLevel.PD_5);
        double converter = typed.quantity("converter", Measure.FRACTION, TradeUnit.PERCENT, 0.9);
        double stored = typed.quantity("device-efficiency", Measure.FRACTION, TradeUnit.PERCENT, 0.85);
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> {
            Estimate efficiency = Estimate.ofIndependent(
                    converter, List.of(new Driver("converter's efficiency", CONVERTER_DEVIATION)));
            return sheet(pack, PackFields.limits(chemistry), new UsbFeed(device, stored, efficiency, level));
        });
    }

    private static UsbLevel level(String typed) {
        return Arrays.stream(UsbLevel.values())
                .filter(level -> level.label().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "level", "\"" + typed + "\" is no USB level; choose one of the list, as written there."));
    }

    private static Sheet sheet(PackModel pack, Limits limits, UsbFeed feed) {
        double storage = DefaultCurves.of(pack.chemistry()).charge(limits.si(Quantity.STORAGE_HIGH));
        UsbAnswer toStorage = UsbAnswer.of(pack, Math.max(0, Math.min(0.99, storage)), feed);
        UsbAnswer toReserve = UsbAnswer.of(pack, limits.si(Quantity.RESERVE), feed);
        return new Sheet(
                String.format(
                        Locale.ROOT,
                        "%.1f full charges until the pack is in its storage band, %.1f until its reserve.",
                        toStorage.fullCharges().value(),
                        toReserve.fullCharges().value()),
                List.of(
                        charges("to_storage", "Charges to the storage band", toStorage),
                        charges("to_reserve", "Charges to the reserve", toReserve),
                        Figure.exact("stop_storage", "Stop for storage at", toStorage.stopVolts(), TradeUnit.VOLT, 2),
                        Figure.exact(
                                "stop_reserve", "Stop at the reserve at", toReserve.stopVolts(), TradeUnit.VOLT, 2),
                        Figure.exact(
                                "power", "Power at the device", feed.level().watts(), TradeUnit.WATT, 1),
                        Figure.exact("pack_amps", "Current of the pack", toReserve.packAmps(), TradeUnit.AMPERE, 2),
                        Figure.exact("heat", "Heat of the converter", feed.heatWatts(), TradeUnit.WATT, 1),
                        Figure.exact(
                                "charge_time", "One charge takes at least", feed.secondsPerCharge(), TradeUnit.HOUR, 1),
                        Figure.exact(
                                "per_charge",
                                "One charge takes from the pack",
                                feed.joulesPerCharge(),
                                TradeUnit.WATT_HOUR,
                                1)),
                notes(feed, toReserve),
                Cautions.FEEDING,
                toReserve.working());
    }

    /** Charges are a bare number: printed here, since no unit of the trade stands behind them. */
    private static Figure charges(String key, String label, UsbAnswer answer) {
        Estimate charges = answer.fullCharges();
        Figure bare = Figure.of(key, label, charges, TradeUnit.SECOND, 2);
        return new Figure(
                key,
                label,
                charges,
                String.format(Locale.ROOT, "%.2f ± %.2f", charges.value(), charges.standardDeviation()),
                bare.drivers());
    }

    private static List<String> notes(UsbFeed feed, UsbAnswer answer) {
        List<String> notes = new ArrayList<>();
        notes.add("The stops are volts of the whole pack while it feeds, rounded up; set the converter's or an alarm's"
                + " limit to them.");
        if (!answer.stepsDown()) {
            notes.add("The pack's volts come down to the level's: a converter that only steps down will not do.");
        }
        if (feed.level().needsFiveAmpCable()) {
            notes.add("More than 3 A needs a cable marked for 5 A.");
        }
        return notes;
    }
}
