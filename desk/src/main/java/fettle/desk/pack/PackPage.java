package fettle.desk.pack;

import fettle.desk.frame.Figures;
import fettle.desk.frame.TaskLine;
import fettle.desk.spread.SpreadStrip;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.CellState;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Rule;
import fettle.engine.units.Driver;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Working;
import fettle.workshop.PackFile;
import java.util.List;
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
 * @param tasks what to do
 * @param strip the spread strip
 * @param figures the pack's numbers
 * @param working how they were reached
 * @param cells one row per cell; empty if cells were not read
 * @param rules what holds for it
 * @param past what was recorded lately, newest first
 * @param earlier what was recorded before that
 */
public record PackPage(
        String tag,
        String chemistry,
        String label,
        Standing standing,
        String standingPhrase,
        boolean retired,
        List<Finding> findings,
        List<String> passed,
        List<TaskLine> tasks,
        SpreadStrip strip,
        List<Figure> figures,
        Working working,
        List<CellRow> cells,
        List<RuleRow> rules,
        List<PastEvent> past,
        List<PastEvent> earlier) {
    private static final int RECENT = 12;

    /** A named number, with what drives its ± (may be empty). */
    public record Figure(String name, String value, String drivers) {}

    /** One cell. */
    public record CellRow(int number, String restVolts, String charge, Working working) {}

    /** One rule in force. */
    public record RuleRow(String meaning, String limit, String source, String status, boolean loosened) {}

    static PackPage of(PackFile file, Figures figures) {
        Assessment found = file.review().assessment();
        Pack pack = found.pack();
        List<PastEvent> past = PastEvent.newestFirst(file.history(), figures);
        return new PackPage(
                pack.tag(),
                pack.chemistry().label(),
                label(pack),
                found.standing(),
                phrase(found, figures),
                file.retired(),
                found.findings(),
                found.passed(),
                file.review().tasks().stream()
                        .map(task -> TaskLine.of(task, figures))
                        .toList(),
                SpreadStrip.inLanes(found, file.rules()),
                numbers(found, figures),
                found.working(),
                found.cells().stream().map(PackPage::cell).toList(),
                file.rules().stream().map(PackPage::rule).toList(),
                past.stream().limit(RECENT).toList(),
                past.stream().skip(RECENT).toList());
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

    private static List<Figure> numbers(Assessment found, Figures figures) {
        Assessment.Counts counts = found.counts();
        return List.of(
                new Figure(
                        "charge now, of the weakest cell",
                        Figures.estimate(found.charge(), TradeUnit.PERCENT, 0),
                        found.charge() == null ? "" : drivers(found.charge().drivers(), TradeUnit.PERCENT)),
                new Figure(
                        "usable above the reserve",
                        Figures.estimate(found.usableCoulombs(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        found.usableCoulombs() == null
                                ? ""
                                : drivers(found.usableCoulombs().drivers(), TradeUnit.MILLIAMPERE_HOUR)),
                new Figure("imbalance in volts", Figures.quantity(found.imbalanceVolts(), TradeUnit.MILLIVOLT, 0), ""),
                new Figure(
                        "imbalance in charge",
                        Figures.estimate(found.imbalanceCoulombs(), TradeUnit.MILLIAMPERE_HOUR, 0),
                        found.imbalanceCoulombs() == null
                                ? ""
                                : drivers(found.imbalanceCoulombs().drivers(), TradeUnit.MILLIAMPERE_HOUR)),
                new Figure("temperature now", Figures.quantity(found.temperatureKelvins(), TradeUnit.CELSIUS, 0), ""),
                new Figure(
                        "kept full",
                        found.fullSince() == null
                                ? "no"
                                : Figures.span(found.fullFor(figures.now())) + ", since "
                                        + figures.moment(found.fullSince()),
                        ""),
                new Figure("charges / runs", counts.charges() + " / " + counts.runs(), ""),
                new Figure(
                        "over-discharged / over-charged / too warm",
                        counts.overDischarges() + " / " + counts.overCharges() + " / " + counts.overTemperatures(),
                        ""));
    }

    private static String drivers(List<Driver> drivers, TradeUnit unit) {
        return drivers.stream()
                .map(driver -> driver.cause() + " "
                        + unit.print(unit.toSi(unit.differenceFromSi(driver.standardDeviation())), 1))
                .collect(Collectors.joining(", "));
    }

    private static CellRow cell(CellState cell) {
        return new CellRow(
                cell.number(),
                TradeUnit.VOLT.print(cell.restVolts(), 3),
                TradeUnit.PERCENT.print(cell.charge(), 0),
                cell.working());
    }

    private static RuleRow rule(Rule rule) {
        return new RuleRow(
                rule.quantity().meaning(),
                rule.print(),
                rule.citation().text(),
                rule.citation().status().label(),
                rule.loosened());
    }
}
