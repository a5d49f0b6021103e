package fettle.engine.supply.field;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a field battery gives, use after use, until all are fed or the reserve is reached.
 *
 * @param lines one a use, in the order given
 * @param enough whether all are fed to their end
 * @param chargeLeft charge left at the end, a fraction
 * @param givenJoules energy the battery gave [J]
 * @param lostJoules energy of that lost in inverters and chargers [J]
 * @param reserveVolts its volts at rest at the reserve [V]: stop there
 * @param working the steps
 */
public record FieldLedger(
        List<FieldLine> lines,
        boolean enough,
        Estimate chargeLeft,
        Estimate givenJoules,
        double lostJoules,
        double reserveVolts,
        Working working) {
    /** Doubts: capacity of a used battery 10 %, exponent 0.05, efficiencies 3 %. From memory. */
    private static final double CAPACITY_SHARE = 0.1;

    private static final double EXPONENT = 0.05;
    private static final double EFFICIENCY_SHARE = 0.03;
    private static final Citation PEUKERT = Citation.published(
            "Peukert 1897, I^k·t constant, in the form with the rated time; lead-acid rest volts after BCI");

    public FieldLedger {
        lines = List.copyOf(lines);
    }

    /** Works out the ledger. */
    public static FieldLedger of(FieldBattery battery, List<FieldUse> uses) {
        if (uses.isEmpty()) {
            throw new InputException("uses", "nothing is fed. Name at least one use, with power and time.");
        }
        List<FieldLine> lines = FieldMarch.lines(battery, uses);
        double[] best = figures(lines);
        List<Driver> charge = new ArrayList<>();
        List<Driver> given = new ArrayList<>();
        vary("charge at the start", best, battery.with(1, battery.exponent(), lower(battery)), uses, charge, given);
        double start = battery.charge().value();
        vary("capacity", best, battery.with(1 - CAPACITY_SHARE, battery.exponent(), start), uses, charge, given);
        if (battery.exponent() > 1) {
            double other = Math.min(1.6, battery.exponent() + EXPONENT);
            vary("Peukert's exponent", best, battery.with(1, other, start), uses, charge, given);
        }
        List<FieldUse> lossier = uses.stream()
                .map(use -> use.withEfficiency(1 - EFFICIENCY_SHARE))
                .toList();
        vary("efficiencies", best, battery.with(1, battery.exponent(), start), lossier, charge, given);
        return new FieldLedger(
                lines,
                lines.stream().allMatch(FieldLine::whole),
                Estimate.ofIndependent(best[0], charge),
                Estimate.ofIndependent(best[1], given),
                lines.stream().mapToDouble(FieldLine::lostJoules).sum(),
                battery.restVolts(battery.reserve()),
                working(battery, lines));
    }

    private static double lower(FieldBattery battery) {
        return Math.max(0, battery.charge().value() - battery.charge().standardDeviation());
    }

    private static void vary(
            String cause,
            double[] best,
            FieldBattery battery,
            List<FieldUse> uses,
            List<Driver> charge,
            List<Driver> given) {
        double[] varied = figures(FieldMarch.lines(battery, uses));
        charge.add(new Driver(cause, Math.abs(varied[0] - best[0])));
        given.add(new Driver(cause, Math.abs(varied[1] - best[1])));
    }

    private static double[] figures(List<FieldLine> lines) {
        return new double[] {
            lines.get(lines.size() - 1).chargeAfter(),
            lines.stream().mapToDouble(FieldLine::batteryJoules).sum()
        };
    }

    private static Working working(FieldBattery battery, List<FieldLine> lines) {
        return new Working(lines.stream()
                .map(line -> new Step(
                        line.name(),
                        "charge used = I · t · (I / I rated)^(k−1), I from power and volts; k not below I rated",
                        List.of(
                                "I = " + TradeUnit.AMPERE.print(line.meanAmps(), 1),
                                "I rated = " + TradeUnit.AMPERE.print(battery.ratedAmps(), 1),
                                String.format(Locale.ROOT, "k = %.2f", battery.exponent()),
                                "t = " + TradeUnit.MINUTE.print(line.seconds(), 0)),
                        TradeUnit.WATT_HOUR.print(line.batteryJoules(), 0) + ", "
                                + TradeUnit.PERCENT.print(line.chargeAfter(), 0) + " left",
                        PEUKERT))
                .toList());
    }
}
