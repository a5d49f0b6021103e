package fettle.cli;

import fettle.engine.pack.simulation.CellEnd;
import fettle.engine.pack.simulation.Passed;
import fettle.engine.pack.simulation.Peak;
import fettle.engine.pack.simulation.StepOutcome;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A simulation's summary as a person reads it. */
final class SummaryText {
    private SummaryText() {}

    static String of(String title, Summary summary) {
        List<String> lines = new ArrayList<>();
        if (!title.isBlank()) {
            lines.add(title);
            lines.add("");
        }
        lines.add(row("%-24s %10s %10s %9s %9s   %s", "step", "begins s", "lasts s", "end V", "end A", "ended by"));
        summary.steps().forEach(step -> steps(lines, step));
        lines.add("");
        passed(lines, summary.passed());
        lines.add("");
        lines.add(row("%-24s %10s %10s %9s %9s", "cell at the end", "V", "rest V", "charge %", "°C"));
        summary.cells().forEach(cell -> lines.add(cell(cell)));
        lines.add("");
        peak(lines, "lowest cell", summary.lowestCellVolts(), TradeUnit.VOLT, 4);
        peak(lines, "highest cell", summary.highestCellVolts(), TradeUnit.VOLT, 4);
        peak(lines, "lowest terminals", summary.lowestVolts(), TradeUnit.VOLT, 3);
        peak(lines, "highest terminals", summary.highestVolts(), TradeUnit.VOLT, 3);
        peak(lines, "largest current", summary.largestAmps(), TradeUnit.AMPERE, 3);
        peak(lines, "hottest cell", summary.hottestKelvins(), TradeUnit.CELSIUS, 1);
        lines.add(row("lasted %.2f s in %d time steps", summary.seconds(), summary.timeSteps()));
        return String.join(System.lineSeparator(), lines);
    }

    private static void steps(List<String> lines, StepOutcome step) {
        lines.add(row(
                "%-24s %10.2f %10.2f %9.4f %9.4f   %s",
                step.name(),
                step.startSeconds(),
                step.seconds(),
                step.last().volts(),
                step.last().amps(),
                step.endedBy().sentence()));
        for (StepOutcome.LimitChange change : step.limits()) {
            lines.add(row(
                    "%-24s %10.2f   %s", "", change.seconds(), change.limit().label()));
        }
    }

    private static void passed(List<String> lines, Passed passed) {
        lines.add(row(
                "out %.5f Ah, %.4f Wh; in %.5f Ah, %.4f Wh",
                TradeUnit.AMPERE_HOUR.fromSi(passed.outCoulombs()),
                TradeUnit.WATT_HOUR.fromSi(passed.outJoules()),
                TradeUnit.AMPERE_HOUR.fromSi(passed.inCoulombs()),
                TradeUnit.WATT_HOUR.fromSi(passed.inJoules())));
        lines.add(row(
                "lost as heat: cells %.4f Wh, leads %.4f Wh, bleed %.4f Wh",
                TradeUnit.WATT_HOUR.fromSi(passed.cellHeatJoules()),
                TradeUnit.WATT_HOUR.fromSi(passed.leadHeatJoules()),
                TradeUnit.WATT_HOUR.fromSi(passed.bleedHeatJoules())));
    }

    private static String cell(CellEnd cell) {
        return row(
                "%-24s %10.4f %10.4f %9.3f %9.2f",
                cell.pack() + " " + cell.position(),
                cell.volts(),
                cell.restVolts(),
                TradeUnit.PERCENT.fromSi(cell.chargeFraction()),
                TradeUnit.CELSIUS.fromSi(cell.kelvins()));
    }

    private static void peak(List<String> lines, String what, Peak peak, TradeUnit unit, int decimals) {
        lines.add(row("%-18s %s at %.2f s", what, unit.print(peak.value(), decimals), peak.seconds()));
    }

    private static String row(String format, Object... figures) {
        return String.format(Locale.ROOT, format, figures).stripTrailing();
    }
}
