package fettle.desk.pack;

import fettle.desk.frame.Figures;
import fettle.desk.frame.TaskLine;
import fettle.desk.spread.SpreadStrip;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.CellState;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Rule;
import fettle.engine.trace.TraceRecord;
import fettle.engine.units.Driver;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Working;
import fettle.workshop.KeptTrace;
import fettle.workshop.NextMeasure;
import fettle.workshop.PackFile;
import fettle.workshop.TraceWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One pack in full.
 *
 * @param tag its tag
 * @param chemistry its chemistry
 * @param label what it is, in one line
 * @param standing its standing
 * @param standingPhrase the same in a sentence, saying what it rests on
 * @param retired whether it is retired
 * @param findings most serious first
 * @param passed the checks it passed, in words
 * @param next what to measure next, of a pack that is unproven
 * @param tasks what to do
 * @param strip the spread strip
 * @param figures the pack's numbers
 * @param working how they were reached
 * @param cells how each cell's charge was reached; empty if cells were not read
 * @param health what the record says of its health
 * @param rules what holds for it
 * @param past what was recorded lately, newest first
 * @param earlier what was recorded before that
 * @param traces logs of it, newest first, with what went wrong in each
 */
public record PackPage(
        String tag,
        String chemistry,
        String label,
        Standing standing,
        String standingPhrase,
        boolean retired,
        List<FindingLine> findings,
        List<String> passed,
        List<NextMeasure> next,
        List<TaskLine> tasks,
        SpreadStrip strip,
        List<Figure> figures,
        Working working,
        List<CellState> cells,
        HealthSection health,
        List<RuleRow> rules,
        List<PastEvent> past,
        List<PastEvent> earlier,
        List<TraceRow> traces) {
    private static final int RECENT = 12;

    /** A named number, with what drives its ± (may be empty). */
    public record Figure(String name, String value, String drivers) {}

    /** One finding: what was found and what to do. */
    public record FindingLine(Standing standing, String statement, String advice, Working working) {}

    /** One rule in force. */
    public record RuleRow(String meaning, String limit, String source, String status, boolean loosened) {}

    /** One log: its number, what passed, and each exception in a sentence. */
    public record TraceRow(long id, String when, String passed, List<String> exceptions) {}

    /** What the page shows of a pack. */
    public static PackPage of(PackFile file, List<KeptTrace> traces, Figures figures) {
        Assessment found = file.review().assessment();
        Pack pack = found.pack();
        List<PastEvent> past = PastEvent.newestFirst(file.history(), file.exceptions(), figures);
        return new PackPage(
                pack.tag(),
                pack.chemistry().label(),
                label(pack),
                found.standing(),
                phrase(found, figures),
                file.retired(),
                found.findings().stream().map(PackPage::finding).toList(),
                found.passed(),
                NextMeasure.of(file, figures.now()),
                TaskLine.ofPack(file.review().tasks(), figures),
                SpreadStrip.of(found, file.rules()),
                numbers(found, file.exceptions().size(), figures),
                found.working(),
                found.cells(),
                HealthSection.of(file, figures),
                file.rules().stream().map(PackPage::rule).toList(),
                past.stream().limit(RECENT).toList(),
                past.stream().skip(RECENT).toList(),
                traces.stream().map(trace -> trace(trace, figures)).toList());
    }

    private static TraceRow trace(KeptTrace trace, Figures figures) {
        TraceRecord record = trace.record();
        return new TraceRow(
                trace.id(),
                record.startedAt() == null ? record.fileName() : figures.moment(record.startedAt()),
                TraceWords.passed(record.hasCurrent(), record.total()),
                record.events().stream()
                        .map(event -> "at " + Figures.clock(event.atSeconds()) + " " + event.sentence())
                        .toList());
    }

    private static String label(Pack pack) {
        return pack.chemistry().label() + " " + pack.arrangement() + " "
                + TradeUnit.MILLIAMPERE_HOUR.print(pack.ratedCapacityCoulombs(), 0) + ", "
                + TradeUnit.WATT_HOUR.print(pack.ratedEnergyJoules(), 1)
                + (pack.connector().isBlank() ? "" : ", connector " + pack.connector())
                + (pack.keeper().isBlank() ? "" : ", kept by " + pack.keeper());
    }

    private static String phrase(Assessment found, Figures figures) {
        return found.latestCheckAt() == null
                ? "It was never checked."
                : "From the check of " + figures.moment(found.latestCheckAt()) + ", "
                        + figures.ago(found.latestCheckAt()) + ".";
    }

    private static List<Figure> numbers(Assessment found, int exceptions, Figures figures) {
        Assessment.Counts counts = found.counts();
        return List.of(
                new Figure(
                        "charge now, of the weakest cell",
                        Figures.estimate(found.charge(), TradeUnit.PERCENT, 0),
                        found.charge() == null ? "" : drivers(found.charge().drivers(), TradeUnit.PERCENT, 1)),
                capacity(found.capacity()),
                new Figure(
                        "usable above the reserve",
                        Figures.estimate(found.usableCoulombs(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        found.usableCoulombs() == null
                                ? ""
                                : drivers(found.usableCoulombs().drivers(), TradeUnit.MILLIAMPERE_HOUR, 0)),
                new Figure("imbalance in volts", Figures.quantity(found.imbalanceVolts(), TradeUnit.MILLIVOLT, 0), ""),
                new Figure(
                        "imbalance in charge",
                        Figures.estimate(found.imbalanceCoulombs(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        found.imbalanceCoulombs() == null
                                ? ""
                                : drivers(found.imbalanceCoulombs().drivers(), TradeUnit.MILLIAMPERE_HOUR, 0)),
                new Figure("temperature now", Figures.quantity(found.temperatureKelvins(), TradeUnit.CELSIUS, 0), ""),
                new Figure(
                        "kept full",
                        found.fullSince() == null
                                ? "no"
                                : Figures.span(found.fullFor(figures.now())) + ", since "
                                        + figures.moment(found.fullSince()),
                        ""),
                new Figure("recorded", counts.charges() + " charges, " + counts.runs() + " runs", ""),
                new Figure("beyond a limit", beyondALimit(counts, exceptions), ""));
    }

    private static Figure capacity(PresentCapacity present) {
        String label = TradeUnit.MILLIAMPERE_HOUR.print(present.labelCoulombs(), 0) + " by its label";
        return present.measured()
                ? new Figure(
                        "holds, measured",
                        TradeUnit.MILLIAMPERE_HOUR.print(present.coulombs(), 0) + " of " + label,
                        drivers(present.coulombs().drivers(), TradeUnit.MILLIAMPERE_HOUR, 0) + "; counted: "
                                + present.evidence())
                : new Figure("holds", label + ", not measured", "");
    }

    private static String beyondALimit(Assessment.Counts counts, int exceptions) {
        Map<String, Integer> times = new LinkedHashMap<>();
        times.put("over-discharged", counts.overDischarges());
        times.put("over-charged", counts.overCharges());
        times.put("too warm", counts.overTemperatures());
        times.put("in its traces", exceptions);
        String told = times.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> entry.getKey() + " " + entry.getValue() + "×")
                .collect(Collectors.joining(", "));
        return told.isEmpty() ? "never recorded" : told;
    }

    private static String drivers(List<Driver> drivers, TradeUnit unit, int decimals) {
        return Figures.unbroken(drivers.stream()
                .map(driver -> driver.cause() + " "
                        + unit.print(unit.toSi(unit.differenceFromSi(driver.standardDeviation())), decimals))
                .collect(Collectors.joining(", ")));
    }

    private static FindingLine finding(Finding finding) {
        return new FindingLine(
                finding.standing(),
                Figures.unbroken(finding.statement()),
                Figures.unbroken(finding.advice()),
                finding.working());
    }

    private static RuleRow rule(Rule rule) {
        return new RuleRow(
                rule.quantity().meaning(),
                rule.print(),
                Figures.unbroken(rule.citation().text()),
                rule.citation().status().label(),
                rule.loosened());
    }
}
