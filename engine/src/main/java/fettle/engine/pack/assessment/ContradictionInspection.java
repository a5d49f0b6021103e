package fettle.engine.pack.assessment;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Readings that the registered chemistry or cell count does not explain, and what they would fit. */
final class ContradictionInspection implements Inspection {
    /** Above the limit by more than a meter's error and a charger's tolerance (± 0.05 V in one maker's sheet). */
    private static final double OVER_VOLTS = 0.05;

    /** Lowest share of the rest minimum that an abused but real cell still shows. Common practice, no source. */
    private static final double LEAST_SHARE = 0.8;

    private static final int MOST_CELLS = 14;

    @Override
    public String passes() {
        return "readings fit the registered chemistry and cell count";
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        Check latest = packCase.latest();
        if (latest == null) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        if (!latest.cellRestVolts().isEmpty()) {
            cells(packCase.pack(), latest, findings);
        } else if (latest.packRestVolts() != null) {
            pack(packCase.pack(), latest.packRestVolts(), findings);
        }
        return findings;
    }

    private static void cells(Pack pack, Check check, List<Finding> findings) {
        int read = check.cellRestVolts().size();
        if (read != pack.cellsInSeries()) {
            findings.add(finding(
                    Standing.GROUNDED,
                    read + " cells were read on a pack registered as " + pack.arrangement() + "; they would fit " + read
                            + "S",
                    "Count the balance-lead wires (cells + 1) and correct the pack or the check.",
                    List.of("cells read = " + read)));
        }
        DoubleSummaryStatistics volts =
                check.cellRestVolts().stream().mapToDouble(Double::doubleValue).summaryStatistics();
        String label = pack.chemistry().label();
        String highest = TradeUnit.VOLT.print(volts.getMax(), 3);
        if (volts.getMax() > limit(pack.chemistry(), Quantity.CHARGE_LIMIT) + OVER_VOLTS) {
            findings.add(finding(
                    Standing.GROUNDED,
                    highest + " per cell is more than " + label + " can have; " + fitting(check),
                    "Do not charge. Read the label again; if the chemistry is right, the pack was over-charged: set it "
                            + "outdoors away from anything that burns.",
                    List.of("highest cell = " + highest)));
        } else if (volts.getMax() < LEAST_SHARE * limit(pack.chemistry(), Quantity.REST_MINIMUM)) {
            findings.add(finding(
                    Standing.GROUNDED,
                    "every cell is at " + highest + " or less, too little for " + label + "; " + fitting(check),
                    "Do not charge. Read the label again; if the chemistry is right, every cell is over-discharged.",
                    List.of("highest cell = " + highest)));
        }
    }

    /** The chemistries that all cells of a check would fit, in words. */
    private static String fitting(Check check) {
        String fits = Arrays.stream(Chemistry.values())
                .filter(chemistry -> check.cellRestVolts().stream().allMatch(volts -> plausible(chemistry, volts)))
                .map(Chemistry::label)
                .collect(Collectors.joining(", "));
        return fits.isEmpty() ? "it fits no chemistry Fettle knows" : "it would fit " + fits;
    }

    private static void pack(Pack pack, double packVolts, List<Finding> findings) {
        List<String> fits = IntStream.rangeClosed(1, MOST_CELLS)
                .filter(count -> plausible(pack.chemistry(), packVolts / count)
                        && packVolts / count >= limit(pack.chemistry(), Quantity.REST_MINIMUM))
                .mapToObj(count -> count + "S at " + TradeUnit.VOLT.print(packVolts / count, 2))
                .toList();
        boolean fitsOwn = plausible(pack.chemistry(), packVolts / pack.cellsInSeries());
        boolean ambiguous = pack.identity() == Pack.Identity.UNCONFIRMED && fits.size() > 1;
        if (!fitsOwn || ambiguous) {
            findings.add(finding(
                    fitsOwn ? Standing.UNPROVEN : Standing.GROUNDED,
                    TradeUnit.VOLT.print(packVolts, 2) + " for the whole pack "
                            + (fitsOwn ? "does not settle the cell count" : "does not fit " + pack.arrangement())
                            + "; for " + pack.chemistry().label() + " it would fit "
                            + (fits.isEmpty() ? "no cell count" : String.join(", ", fits)),
                    "Do not charge: charging too few cells at the volts of more over-charges them. Count the balance-lead "
                            + "wires (cells + 1), read each cell and confirm the pack.",
                    List.of("pack volts = " + TradeUnit.VOLT.print(packVolts, 2))));
        }
    }

    private static boolean plausible(Chemistry chemistry, double volts) {
        return volts <= limit(chemistry, Quantity.CHARGE_LIMIT) + OVER_VOLTS
                && volts >= LEAST_SHARE * limit(chemistry, Quantity.REST_MINIMUM);
    }

    private static double limit(Chemistry chemistry, Quantity quantity) {
        return RuleSet.of(List.of()).limitsFor(chemistry, null, List.of()).si(quantity);
    }

    private static Finding finding(Standing standing, String statement, String advice, List<String> inputs) {
        return new Finding(
                "contradiction",
                standing,
                statement,
                advice,
                Working.of(new Step(
                        "do the readings fit the label",
                        "volts per cell = pack volts / cells, within the chemistry's lowest and highest",
                        inputs,
                        statement,
                        Citation.commonPractice("chemistry and cell count are confirmed by a person, never guessed"))));
    }
}
