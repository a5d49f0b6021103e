package fettle.engine.pack.assessment;

import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * A cell that falls behind its neighbours from check to check, long before millivolts look bad.
 *
 * <p>Formula: for each cell the straight line through (time, z_cell − median z of the pack); it drifts if the slope is
 * negative by {@value #DEVIATIONS} of its own standard errors and the line has fallen by {@value #LEAST_DRIFT_FRACTION}
 * of capacity.
 */
final class DriftInspection implements Inspection {
    private static final int LEAST_CHECKS = 5;
    private static final double LEAST_SPAN_SECONDS = TradeUnit.DAY.toSi(28);
    private static final double DEVIATIONS = 4;
    private static final double LEAST_DRIFT_FRACTION = 0.015;
    private static final double MONTH_SECONDS = TradeUnit.DAY.toSi(30);
    private static final Citation SOURCE = Citation.commonPractice(
            "straight line by least squares; a falling cell leaks more or holds less than its neighbours");

    @Override
    public String passes() {
        return "no cell falls behind its neighbours";
    }

    @Override
    public boolean canBeAsked(PackCase packCase) {
        return checks(packCase).size() >= LEAST_CHECKS && spanSeconds(checks(packCase)) >= LEAST_SPAN_SECONDS;
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        if (!canBeAsked(packCase)) {
            return List.of();
        }
        List<Check> checks = checks(packCase);
        List<Finding> findings = new ArrayList<>();
        for (int cell = 0; cell < packCase.pack().cellsInSeries(); cell++) {
            SimpleRegression line = line(packCase, checks, cell);
            boolean falls = line.getSlope() < -DEVIATIONS * line.getSlopeStdErr();
            boolean far = -line.getSlope() * spanSeconds(checks) > LEAST_DRIFT_FRACTION;
            if (falls && far) {
                findings.add(finding(packCase, cell + 1, line, checks));
            }
        }
        return findings;
    }

    private static SimpleRegression line(PackCase packCase, List<Check> checks, int cell) {
        SimpleRegression line = new SimpleRegression();
        for (Check check : checks) {
            double[] charge = check.cellRestVolts().stream()
                    .mapToDouble(packCase.curve()::charge)
                    .toArray();
            line.addData(seconds(checks.get(0), check), charge[cell] - median(charge));
        }
        return line;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : 0.5 * (sorted[middle - 1] + sorted[middle]);
    }

    private static List<Check> checks(PackCase packCase) {
        int cells = packCase.pack().cellsInSeries();
        return packCase.history().checks().stream()
                .filter(check -> cells > 2 && check.cellRestVolts().size() == cells)
                .toList();
    }

    private static double spanSeconds(List<Check> checks) {
        return checks.isEmpty() ? 0 : seconds(checks.get(0), checks.get(checks.size() - 1));
    }

    private static double seconds(Check from, Check to) {
        return Duration.between(from.takenAt(), to.takenAt()).toSeconds();
    }

    private static Finding finding(PackCase packCase, int cell, SimpleRegression line, List<Check> checks) {
        double perMonth = packCase.pack().ratedCapacityCoulombs() * MONTH_SECONDS;
        double deviation = line.getSlopeStdErr() * perMonth;
        Estimate fall = new Estimate(
                -line.getSlope() * perMonth, deviation, List.of(new Driver("scatter about the line", deviation)));
        String rate = TradeUnit.MILLIAMPERE_HOUR.print(fall, 0) + " a month";
        String statement =
                "cell " + cell + " falls behind the others by " + rate + " over " + checks.size() + " checks";
        return new Finding(
                "drifting-cell",
                Standing.LIMITED,
                statement,
                "Balance it, read the cells after a week at rest, and use it for light loads only. If the gap returns at rest, "
                        + "the cell leaks: take the pack out of use.",
                Working.of(new Step(
                        "drift of cell " + cell,
                        "slope of (charge of the cell − median of the pack) over time",
                        List.of(
                                "checks = " + checks.size(),
                                "span = " + TradeUnit.DAY.print(spanSeconds(checks), 0),
                                "fall over the span = "
                                        + TradeUnit.PERCENT.print(-line.getSlope() * spanSeconds(checks), 1)),
                        rate,
                        SOURCE)));
    }
}
