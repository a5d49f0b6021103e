package fettle.engine.pack.assessment;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Cells below the rest minimum or above the charge limit, now or earlier in the record. */
final class VoltsInspection implements Inspection {
    /** A charger's end point may read this much over before it counts as over-charge. From memory. */
    static final double CHARGER_TOLERANCE_VOLTS = 0.02;

    @Override
    public String passes() {
        return "no cell below its rest minimum or above its charge limit, now or in the record";
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        List<Finding> findings = new ArrayList<>();
        List<Check> checks = packCase.history().checks();
        for (int i = checks.size() - 1; i >= 0; i--) {
            boolean latest = i == checks.size() - 1;
            Check check = checks.get(i);
            if (findings.stream().noneMatch(finding -> finding.id().equals("over-discharge"))
                    && isBelow(packCase, check)) {
                findings.add(overDischarge(packCase, check, latest));
            }
            if (findings.stream().noneMatch(finding -> finding.id().equals("over-charge"))
                    && isAbove(packCase, check)) {
                findings.add(overCharge(packCase, highest(packCase, check), day(check.takenAt()), latest));
            }
        }
        List<ChargeRecord> charges = packCase.history().charges();
        charges.stream()
                .filter(charge -> isAbove(packCase, charge))
                .reduce((earlier, later) -> later)
                .filter(charge ->
                        findings.stream().noneMatch(finding -> finding.id().equals("over-charge")))
                .ifPresent(charge -> findings.add(overCharge(
                        packCase,
                        charge.endPackVolts() / packCase.pack().cellsInSeries(),
                        day(charge.endedAt()),
                        charge == charges.get(charges.size() - 1))));
        return findings;
    }

    static boolean isBelow(PackCase packCase, Check check) {
        return lowest(packCase, check) < packCase.limit(Quantity.REST_MINIMUM);
    }

    static boolean isAbove(PackCase packCase, Check check) {
        return highest(packCase, check) > packCase.limit(Quantity.CHARGE_LIMIT) + CHARGER_TOLERANCE_VOLTS;
    }

    private static Finding overDischarge(PackCase packCase, Check check, boolean latest) {
        Rule rule = packCase.limits().rule(Quantity.REST_MINIMUM);
        String volts = TradeUnit.VOLT.print(lowest(packCase, check), 3);
        String statement =
                "a cell rested at " + volts + " on " + day(check.takenAt()) + ", below the minimum of " + rule.print();
        return latest
                ? Inspection.against(
                        rule,
                        "over-discharge",
                        Standing.GROUNDED,
                        statement,
                        "Do not charge in the usual way. Inspect it; follow its maker's instructions or take it to a battery "
                                + "collection point.",
                        List.of("lowest cell = " + volts))
                : Inspection.against(
                        rule,
                        "over-discharge",
                        Standing.LIMITED,
                        statement,
                        "Charge at no more than half the usual current and watch the cell's self-discharge and resistance.",
                        List.of("lowest cell = " + volts));
    }

    private static Finding overCharge(PackCase packCase, double cellVolts, LocalDate day, boolean latest) {
        Rule rule = packCase.limits().rule(Quantity.CHARGE_LIMIT);
        String volts = TradeUnit.VOLT.print(cellVolts, 3);
        return Inspection.against(
                rule,
                "over-charge",
                latest ? Standing.GROUNDED : Standing.LIMITED,
                "a cell was at " + volts + " on " + day + ", above the limit of " + rule.print(),
                "Find out which charger did it and stop using that charger until its end volts are measured.",
                List.of("highest cell = " + volts));
    }

    /** A charge noted to have ended above the limit of all cells together. */
    static boolean isAbove(PackCase packCase, ChargeRecord charge) {
        Double endVolts = charge.endPackVolts();
        return endVolts != null
                && endVolts / packCase.pack().cellsInSeries()
                        > packCase.limit(Quantity.CHARGE_LIMIT) + CHARGER_TOLERANCE_VOLTS;
    }

    private static double lowest(PackCase packCase, Check check) {
        return volts(packCase, check).stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double highest(PackCase packCase, Check check) {
        return volts(packCase, check).stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private static List<Double> volts(PackCase packCase, Check check) {
        Double packVolts = check.packRestVolts();
        return check.cellRestVolts().isEmpty() && packVolts != null
                ? List.of(packVolts / packCase.pack().cellsInSeries())
                : check.cellRestVolts();
    }

    private static LocalDate day(Instant at) {
        return at.atOffset(ZoneOffset.UTC).toLocalDate();
    }
}
