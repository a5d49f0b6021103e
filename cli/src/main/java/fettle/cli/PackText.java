package fettle.cli;

import fettle.desk.frame.Figures;
import fettle.engine.charge.Task;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.CellState;
import fettle.engine.pack.Finding;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.units.TradeUnit;
import fettle.workshop.AlikePack;
import fettle.workshop.PackFile;
import fettle.workshop.PastLimit;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** One pack in full, as text. */
final class PackText {
    private PackText() {}

    /** How much to tell. */
    enum Detail {
        ANSWERS,
        WITH_WORKING;

        static Detail of(boolean working) {
            return working ? WITH_WORKING : ANSWERS;
        }
    }

    static String of(PackFile file, Detail detail, Instant now, ZoneId zone) {
        Assessment state = file.review().assessment();
        List<String> lines = new ArrayList<>(ReviewTable.heading(state));
        if (file.retired()) {
            lines.add("retired: out of use");
        }
        numbers(state, lines);
        HealthText.add(file.health(), zone, lines);
        for (Finding finding : state.findings()) {
            lines.add("");
            lines.addAll(Wrapped.lines("why", finding.statement()));
            lines.addAll(Wrapped.lines("", finding.advice()));
            WorkingText.add(finding.working(), detail, lines);
        }
        for (Task task : file.review().tasks()) {
            lines.add("");
            lines.addAll(Wrapped.lines("do", ReviewTable.instruction(task, now, zone)));
            lines.addAll(Wrapped.lines("because", task.reason()));
            WorkingText.add(task.working(), detail, lines);
        }
        for (AlikePack alike : file.alike()) {
            PresentCapacity holds = alike.capacity();
            lines.addAll(Wrapped.lines(
                    "alike",
                    alike.tag() + " " + alike.standing().word() + ", "
                            + (holds.measured()
                                    ? "holds " + TradeUnit.MILLIAMPERE_HOUR.print(holds.coulombs(), 0)
                                    : "capacity not measured")
                            + ", " + alike.charges() + " charges"));
        }
        if (!file.exceptions().isEmpty()) {
            lines.add("");
            file.exceptions().forEach(exception -> lines.addAll(Wrapped.lines("event", sentence(exception, zone))));
        }
        lines.add("");
        counts(file, lines);
        WorkingText.add(state.working(), detail, lines);
        if (!file.health().capacity().influences().isEmpty()) {
            WorkingText.add(file.health().capacity().working(), detail, lines);
        }
        return String.join(System.lineSeparator(), lines);
    }

    private static void numbers(Assessment state, List<String> lines) {
        for (CellState cell : state.cells()) {
            lines.add(String.format(
                    "  cell %2d  %s  %s",
                    cell.number(),
                    TradeUnit.VOLT.print(cell.restVolts(), 3),
                    TradeUnit.PERCENT.print(cell.charge(), 0)));
        }
        PresentCapacity present = state.capacity();
        if (present.measured() && present.plannedShare() < 1) {
            lines.addAll(Wrapped.lines(
                    "planned",
                    "with " + TradeUnit.MILLIAMPERE_HOUR.print(present.plannedCoulombs(), 0) + ", measured from "
                            + present.evidence()));
        }
        if (state.usableCoulombs() != null) {
            lines.addAll(Wrapped.lines(
                    "to use", TradeUnit.MILLIAMPERE_HOUR.print(state.usableCoulombs(), 0) + " above the reserve"));
        }
        if (state.imbalanceVolts() != null && state.imbalanceCoulombs() != null) {
            lines.addAll(Wrapped.lines(
                    "apart",
                    TradeUnit.MILLIVOLT.print(state.imbalanceVolts(), 0) + " = "
                            + TradeUnit.MILLIAMPERE_HOUR.print(state.imbalanceCoulombs(), 0)));
        }
    }

    private static String sentence(PastLimit exception, ZoneId zone) {
        String when = exception.at() == null ? "" : exception.at().atZone(zone).toLocalDate() + " ";
        String answer =
                exception.acknowledged().isEmpty() ? "not looked into" : "looked into: " + exception.acknowledged();
        return when + "trace " + exception.trace() + " at "
                + Figures.clock(exception.event().atSeconds()) + ": "
                + exception.event().sentence() + "; " + answer;
    }

    private static void counts(PackFile file, List<String> lines) {
        Assessment.Counts counts = file.review().assessment().counts();
        lines.addAll(Wrapped.lines(
                "record",
                "checks " + file.history().checks().size() + " · charges " + counts.charges() + " · runs "
                        + counts.runs()
                        + " · over-discharged " + counts.overDischarges() + " · over-charged " + counts.overCharges()
                        + " · over-temperature " + counts.overTemperatures()));
    }
}
