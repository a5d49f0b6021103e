package fettle.cli;

import fettle.engine.health.Ageing;
import fettle.engine.health.PackHealth;
import fettle.engine.health.capacity.CapacityReport;
import fettle.engine.health.capacity.Influence;
import fettle.engine.health.forecast.Crossing;
import fettle.engine.health.forecast.UseScenario;
import fettle.engine.health.leakage.CellLeak;
import fettle.engine.units.TradeUnit;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A pack's health as text: label against what was measured, and where it goes. */
final class HealthText {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
    private static final double SECONDS_A_DAY = TradeUnit.DAY.toSi(1);

    private HealthText() {}

    static void add(PackHealth health, ZoneId zone, List<String> lines) {
        CapacityReport report = health.capacity();
        if (!report.influences().isEmpty()) {
            lines.addAll(Wrapped.lines(
                    "holds",
                    TradeUnit.MILLIAMPERE_HOUR.print(report.capacity(), 0) + ", "
                            + TradeUnit.PERCENT.print(report.shareOfLabel(), 0) + " of its label; 95 % interval "
                            + TradeUnit.MILLIAMPERE_HOUR.print(report.lowCoulombs(), 0) + " to "
                            + TradeUnit.MILLIAMPERE_HOUR.print(report.highCoulombs(), 0) + ", from "
                            + report.influences().size() + " noted charges"));
        }
        for (Influence outlier : report.outliers()) {
            lines.addAll(Wrapped.lines(
                    "",
                    "does not fit the others and counts less: " + outlier.pair().how()));
        }
        if (!health.cells().isEmpty()) {
            lines.addAll(Wrapped.lines(
                    "cells",
                    health.cells().stream()
                            .map(cell -> TradeUnit.MILLIAMPERE_HOUR.print(cell, 0))
                            .collect(Collectors.joining(" · "))));
        }
        if (!health.leaks().isEmpty()) {
            lines.addAll(Wrapped.lines(
                    "loses",
                    health.leaks().stream().map(HealthText::loss).collect(Collectors.joining(" · "))
                            + " a day at rest, cell by cell"));
        }
        ageing("capacity", health.capacityAgeing(), zone, lines);
        ageing("resistance", health.resistanceAgeing(), zone, lines);
        otherwise(health.capacityAgeing(), lines);
    }

    private static void otherwise(@Nullable Ageing ageing, List<String> lines) {
        if (ageing == null || !(ageing.trend().cyclesPerDay() > 0)) {
            return;
        }
        for (UseScenario scenario : UseScenario.ASKED) {
            Crossing left = ageing.crossingIf(scenario);
            lines.addAll(Wrapped.lines(
                    "",
                    "if " + scenario.change() + ", after " + cycles(left.median()) + " cycles more, 95 % interval "
                            + cycles(left.low()) + " to " + cycles(left.high())));
        }
    }

    private static String loss(CellLeak leak) {
        return TradeUnit.MILLIAMPERE_HOUR.print(leak.lossAmps().times(SECONDS_A_DAY), 1);
    }

    private static void ageing(String what, @Nullable Ageing ageing, ZoneId zone, List<String> lines) {
        if (ageing == null) {
            return;
        }
        Crossing left = ageing.crossing();
        lines.addAll(Wrapped.lines(
                "retires",
                "by " + what + " after " + cycles(left.median()) + " cycles more, 95 % interval " + cycles(left.low())
                        + " to " + cycles(left.high()) + "; " + month(ageing, left.median(), zone) + ", interval "
                        + month(ageing, left.low(), zone) + " to " + month(ageing, left.high(), zone)));
    }

    private static String cycles(double cycles) {
        return Double.isFinite(cycles) ? String.format(Locale.ROOT, "%.0f", cycles) : "more than foreseeable";
    }

    private static String month(Ageing ageing, double cycles, ZoneId zone) {
        return ageing.date(cycles)
                .map(instant -> MONTH.format(instant.atZone(zone)))
                .orElse("no date in sight");
    }
}
