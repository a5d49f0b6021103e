package fettle.engine.supply.usb;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * What a pack feeds through USB until its weakest cell comes to a charge.
 *
 * @param fullCharges full charges of the device
 * @param usableJoules energy the pack gives until then, at its terminals [J]
 * @param stopVolts volts of the whole pack under this load at which to stop [V], never below what the charge asks for
 * @param packAmps current of the pack at the end, when it is largest [A]
 * @param stepsDown whether the pack stays above the level's volts, so that a step-down converter will do
 * @param working the steps
 */
public record UsbAnswer(
        Estimate fullCharges,
        Estimate usableJoules,
        double stopVolts,
        double packAmps,
        boolean stepsDown,
        Working working) {
    private static final int PIECES = 200;
    private static final double HUNDREDTHS = 100; // stop volts are rounded up to a hundredth of a volt
    private static final double STEP_DOWN_HEADROOM_VOLTS = 0.5; // from memory
    private static final Citation ENERGY = Citation.published(
            "energy = charge · volts; converter data sheets: up to 95 % (TI TPS5420-Q1, TPS62040), typically less");

    /**
     * Works it out.
     *
     * @param pack the pack as it is known
     * @param stopCharge charge of the weakest cell at which feeding stops, a fraction below its charge now
     * @param feed what is fed
     */
    public static UsbAnswer of(PackModel pack, double stopCharge, UsbFeed feed) {
        if (!(stopCharge >= 0 && stopCharge < 1)) {
            throw new InputException("stop", "the charge to stop at must be from 0 to below 100 %.");
        }
        Estimate usable = Spreading.of(pack, varied -> new double[] {usable(varied, stopCharge, feed)})
                .get(0);
        double drawn = drawn(pack, stopCharge);
        double restVolts = restVolts(pack, drawn);
        double amps = amps(restVolts, ohms(pack), feed.packWatts());
        double volts = restVolts - amps * ohms(pack);
        return new UsbAnswer(
                charges(usable, feed),
                usable,
                Math.ceil(volts * HUNDREDTHS) / HUNDREDTHS,
                amps,
                volts >= feed.level().volts() + STEP_DOWN_HEADROOM_VOLTS,
                Working.of(step(usable, feed)));
    }

    private static Estimate charges(Estimate usable, UsbFeed feed) {
        double charges = feed.fullCharges(usable.value());
        List<Driver> drivers =
                new ArrayList<>(usable.times(1 / feed.joulesPerCharge()).drivers());
        Estimate converter = feed.converterEfficiency();
        drivers.add(new Driver("converter's efficiency", charges * converter.standardDeviation() / converter.value()));
        return Estimate.ofIndependent(charges, drivers);
    }

    /** Rest energy between the charges, less what the load's own current turns to heat in the pack. */
    private static double usable(PackModel pack, double stopCharge, UsbFeed feed) {
        double drawn = drawn(pack, stopCharge);
        double piece = drawn / PIECES;
        double joules = 0;
        for (int i = 0; i < PIECES; i++) {
            double volts = restVolts(pack, (i + 0.5) * piece);
            joules += piece * (volts - amps(volts, ohms(pack), feed.packWatts()) * ohms(pack));
        }
        return joules;
    }

    private static double drawn(PackModel pack, double stopCharge) {
        return Math.max(
                0,
                pack.cells().stream()
                        .mapToDouble(cell -> (cell.chargeFraction() - stopCharge) * cell.capacityCoulombs())
                        .min()
                        .orElseThrow());
    }

    private static double restVolts(PackModel pack, double drawn) {
        RestCurve curve = DefaultCurves.of(pack.chemistry());
        return pack.cells().stream()
                .mapToDouble(cell ->
                        curve.volts(cell.chargeFraction() - drawn / cell.capacityCoulombs()) + pack.restShiftVolts())
                .sum();
    }

    /** Without the slow part of the sag: the stop is then a little early, never late. */
    private static double ohms(PackModel pack) {
        return pack.leadOhms()
                + pack.cells().stream().mapToDouble(CellModel::stepOhms).sum();
    }

    private static double amps(double volts, double ohms, double watts) {
        double root = volts * volts - 4 * ohms * watts;
        if (root < 0) {
            throw new InputException(
                    "level",
                    "the pack cannot give " + TradeUnit.WATT.print(watts, 0)
                            + " down to that charge. Choose a lower level, or stop earlier.");
        }
        return 2 * watts / (volts + Math.sqrt(root));
    }

    private static Step step(Estimate usable, UsbFeed feed) {
        return new Step(
                "full charges",
                "usable energy · converter · device's efficiency / energy of the device",
                List.of(
                        "usable = " + TradeUnit.WATT_HOUR.print(usable, 1),
                        "converter = " + TradeUnit.PERCENT.print(feed.converterEfficiency(), 0),
                        "device stores " + TradeUnit.PERCENT.print(feed.deviceEfficiency(), 0),
                        "device holds " + TradeUnit.WATT_HOUR.print(feed.deviceJoules(), 1)),
                TradeUnit.WATT_HOUR.print(feed.joulesPerCharge(), 1) + " from the pack a charge",
                ENERGY);
    }
}
