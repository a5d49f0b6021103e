package fettle.desk.pack;

import fettle.desk.frame.Figures;
import fettle.engine.health.Ageing;
import fettle.engine.health.LadderReading;
import fettle.engine.health.PackHealth;
import fettle.engine.health.capacity.CapacityReport;
import fettle.engine.health.capacity.Influence;
import fettle.engine.health.forecast.Crossing;
import fettle.engine.health.forecast.UseEffect;
import fettle.engine.health.forecast.UseScenario;
import fettle.engine.health.leakage.CellLeak;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.Driver;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Working;
import fettle.workshop.AlikePack;
import fettle.workshop.PackFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the record says of a pack's health: its label against what was measured, and where it goes.
 *
 * @param sentence label and measurement in one sentence
 * @param figures named numbers
 * @param cells one row per cell; empty if nothing tells them apart
 * @param charges the evidence, that which counts most first
 * @param picture capacity over cycles; {@code null} below three readings
 * @param ladder the cells' resistances over time; {@code null} below two readings
 * @param alike packs of the same label bought together; empty if there is no other
 * @param working how capacity was reached
 */
public record HealthSection(
        String sentence,
        List<PackPage.Figure> figures,
        List<CellRow> cells,
        List<ChargeRow> charges,
        @Nullable TrendPicture picture,
        @Nullable LadderPicture ladder,
        List<AlikeRow> alike,
        Working working) {
    private static final double SECONDS_A_DAY = TradeUnit.DAY.toSi(1);

    /** One cell: what it holds and what it loses at rest. */
    public record CellRow(int number, String capacity, String lossPerDay, boolean alarm) {}

    /** One pack among those bought together. */
    public record AlikeRow(
            String tag, Standing standing, String holds, String share, String ohms, String times, String charges) {}

    /** One charge as evidence. */
    public record ChargeRow(String when, String how, String says, String share, String note) {}

    static HealthSection of(PackFile file, Figures figures) {
        PackHealth health = file.health();
        CapacityReport report = health.capacity();
        return new HealthSection(
                sentence(report),
                numbers(health, figures),
                cells(health),
                charges(report, figures),
                health.capacityAgeing() == null ? null : TrendPicture.of(health.capacityAgeing()),
                LadderPicture.of(health.ladder(), resistanceLimit(file.rules()), figures),
                file.alike().stream().map(HealthSection::alike).toList(),
                report.working());
    }

    private static double resistanceLimit(List<Rule> rules) {
        return rules.stream()
                .filter(rule -> rule.quantity() == Quantity.RETIRE_RESISTANCE)
                .mapToDouble(Rule::valueSi)
                .findFirst()
                .orElseThrow();
    }

    private static AlikeRow alike(AlikePack pack) {
        PresentCapacity present = pack.capacity();
        OptionalDouble ohms = pack.latest().stream()
                .mapToDouble(reading -> reading.ohmsAt25().value())
                .average();
        OptionalDouble times =
                pack.latest().stream().mapToDouble(LadderReading::timesFirst).max();
        return new AlikeRow(
                pack.tag(),
                pack.standing(),
                present.measured() ? TradeUnit.MILLIAMPERE_HOUR.print(present.coulombs(), 0) : "not measured",
                present.measured()
                        ? TradeUnit.PERCENT.print(present.coulombs().value() / present.labelCoulombs(), 0)
                        : Figures.NOT_KNOWN,
                ohms.isPresent() ? TradeUnit.MILLIOHM.print(ohms.getAsDouble(), 1) : Figures.NOT_KNOWN,
                times.isPresent() ? String.format(Locale.ROOT, "%.2f", times.getAsDouble()) : Figures.NOT_KNOWN,
                pack.charges() + (pack.leaking() ? ", a cell leaks" : ""));
    }

    private static String sentence(CapacityReport report) {
        String label = TradeUnit.MILLIAMPERE_HOUR.print(report.ratedCoulombs(), 0);
        if (report.influences().isEmpty()) {
            return "The label says " + label
                    + ". Nothing noted or logged tells what it holds: note what a charge puts back, with rest"
                    + " volts of the cells before it, or take a log with rests before and after a run.";
        }
        return Figures.unbroken("The label says " + label + "; "
                + (report.influences().size() == 1
                        ? "one charge or run says "
                        : report.influences().size() + " charges and runs say ")
                + TradeUnit.MILLIAMPERE_HOUR.print(report.capacity(), 0) + ", "
                + TradeUnit.PERCENT.print(report.shareOfLabel(), 0) + " of it.");
    }

    private static List<PackPage.Figure> numbers(PackHealth health, Figures figures) {
        List<PackPage.Figure> numbers = new ArrayList<>();
        CapacityReport report = health.capacity();
        if (!report.influences().isEmpty()) {
            numbers.add(new PackPage.Figure(
                    "capacity, 95 % interval",
                    TradeUnit.MILLIAMPERE_HOUR.print(report.lowCoulombs(), 0) + " to "
                            + TradeUnit.MILLIAMPERE_HOUR.print(report.highCoulombs(), 0),
                    report.capacity().drivers().stream()
                            .sorted(Comparator.comparingDouble(Driver::standardDeviation)
                                    .reversed())
                            .map(driver -> driver.cause() + " "
                                    + TradeUnit.MILLIAMPERE_HOUR.print(driver.standardDeviation(), 0))
                            .collect(Collectors.joining(", "))));
        }
        ageing("capacity", health.capacityAgeing(), figures, numbers);
        ageing("resistance", health.resistanceAgeing(), figures, numbers);
        otherwise(health.capacityAgeing(), numbers);
        return numbers;
    }

    private static void ageing(String what, @Nullable Ageing ageing, Figures figures, List<PackPage.Figure> numbers) {
        if (ageing == null) {
            return;
        }
        Crossing crossing = ageing.crossing();
        numbers.add(new PackPage.Figure(
                "cycles left by " + what,
                cycles(crossing.median()) + ", 95 % interval " + cycles(crossing.low()) + " to "
                        + cycles(crossing.high()),
                ""));
        numbers.add(new PackPage.Figure(
                "retires by " + what,
                date(ageing, crossing.median(), figures) + ", 95 % interval " + date(ageing, crossing.low(), figures)
                        + " to " + date(ageing, crossing.high(), figures),
                ""));
    }

    private static void otherwise(@Nullable Ageing ageing, List<PackPage.Figure> numbers) {
        if (ageing == null || !(ageing.trend().cyclesPerDay() > 0)) {
            return;
        }
        for (UseScenario scenario : UseScenario.ASKED) {
            Crossing crossing = ageing.crossingIf(scenario);
            numbers.add(new PackPage.Figure(
                    "cycles left by capacity, if " + scenario.change(),
                    cycles(crossing.median()) + ", 95 % interval " + cycles(crossing.low()) + " to "
                            + cycles(crossing.high()),
                    wear(scenario.effect())));
        }
    }

    private static String wear(UseEffect effect) {
        return effect.rest().standardDeviation() > 0
                ? "wear at rest of " + TradeUnit.PERCENT.print(effect.rest(), 0) + " of now"
                : "wear in use of " + TradeUnit.PERCENT.print(effect.cycling(), 0) + " of now";
    }

    private static String cycles(double cycles) {
        return Double.isFinite(cycles) ? String.format(Locale.ROOT, "%.0f", cycles) : "not in sight";
    }

    private static String date(Ageing ageing, double cycles, Figures figures) {
        return ageing.date(cycles).map(figures::month).orElse("not in sight");
    }

    private static List<CellRow> cells(PackHealth health) {
        int count = Math.max(health.cells().size(), health.leaks().size());
        List<CellRow> rows = new ArrayList<>();
        for (int cell = 0; cell < count; cell++) {
            CellLeak leak = cell < health.leaks().size() ? health.leaks().get(cell) : null;
            rows.add(new CellRow(
                    cell + 1,
                    cell < health.cells().size()
                            ? TradeUnit.MILLIAMPERE_HOUR.print(health.cells().get(cell), 0)
                            : Figures.NOT_KNOWN,
                    leak == null
                            ? Figures.NOT_KNOWN
                            : TradeUnit.MILLIAMPERE_HOUR.print(leak.lossAmps().times(SECONDS_A_DAY), 1),
                    leak != null && leak.alarm()));
        }
        return rows;
    }

    private static List<ChargeRow> charges(CapacityReport report, Figures figures) {
        return report.influences().stream()
                .sorted(Comparator.comparingDouble(Influence::share).reversed())
                .map(influence -> new ChargeRow(
                        figures.moment(influence.pair().at()),
                        influence.pair().how(),
                        TradeUnit.MILLIAMPERE_HOUR.print(
                                influence.pair().coulombs() / influence.pair().changeFraction(), 0),
                        TradeUnit.PERCENT.print(influence.share(), 0),
                        influence.outlier() ? "does not fit the others: counts less" : ""))
                .toList();
    }
}
