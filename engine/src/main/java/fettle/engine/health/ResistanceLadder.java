package fettle.engine.health;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Rule;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceResistance;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The cells' resistances over time at 25 °C, each against its own first reading by the same method: readings of checks, and
 * what traces were found to tell. Methods are never mixed: they do not measure the same thing. Traces without a date are left
 * out.
 */
public final class ResistanceLadder {
    /** The method of readings found in traces. */
    public static final String TRACES = "traces";

    private static final double METER_SHARE_DEVIATION = 0.05; // repeat of a hand-held resistance reading. From memory
    private static final double UNKNOWN_KELVINS_DEVIATION = 3;

    private ResistanceLadder() {}

    /** The rungs, oldest first. */
    public static List<LadderReading> of(PackHistory history, List<TraceRecord> traces) {
        List<LadderReading> bare = new ArrayList<>();
        history.checks().forEach(check -> addCheck(check, bare));
        traces.forEach(trace -> addTrace(trace, bare));
        bare.sort(Comparator.comparing(LadderReading::at));
        Map<String, Double> first = new HashMap<>();
        return bare.stream()
                .map(reading -> {
                    double ohms = reading.ohmsAt25().value();
                    double baseline = first.computeIfAbsent(reading.cell() + reading.method(), any -> ohms);
                    return new LadderReading(
                            reading.at(), reading.method(), reading.cell(), reading.ohmsAt25(), ohms / baseline);
                })
                .toList();
    }

    /** The way of reading with the most readings; empty for none. */
    public static String mostUsed(List<LadderReading> ladder) {
        return ladder.stream()
                .collect(Collectors.groupingBy(LadderReading::method, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    /** The latest reading of each cell by the way of reading used most. */
    public static List<LadderReading> latest(List<LadderReading> ladder) {
        String method = mostUsed(ladder);
        TreeMap<Integer, LadderReading> latest = new TreeMap<>();
        ladder.stream()
                .filter(reading -> reading.method().equals(method))
                .forEach(reading -> latest.put(reading.cell(), reading));
        return List.copyOf(latest.values());
    }

    /** The worst cell by traces whose latest reading has reached the limit. */
    static Optional<Finding> finding(List<LadderReading> ladder, Rule limit) {
        Map<Integer, LadderReading> latest = new HashMap<>();
        ladder.stream()
                .filter(reading -> reading.method().equals(TRACES))
                .forEach(reading -> latest.put(reading.cell(), reading));
        return latest.values().stream()
                .max(Comparator.comparingDouble(LadderReading::timesFirst))
                .filter(worst -> worst.timesFirst() >= limit.valueSi())
                .map(worst -> finding(worst, limit));
    }

    private static Finding finding(LadderReading worst, Rule limit) {
        String whose = worst.cell() == 0 ? "the mean cell" : "cell " + worst.cell();
        String statement = "resistance of " + whose + " by its traces is "
                + TradeUnit.MILLIOHM.print(worst.ohmsAt25(), 1)
                + String.format(Locale.ROOT, " at 25 °C, %.1f times its first, at the limit of ", worst.timesFirst())
                + limit.print();
        return new Finding(
                "resistance",
                Standing.LIMITED,
                statement,
                "Log another run at room temperature; if it holds, retire the pack from hard use.",
                Working.of(new Step(
                        "resistance at 25 °C",
                        "latest trace over first trace, both brought to 25 °C",
                        List.of("latest = " + TradeUnit.MILLIOHM.print(worst.ohmsAt25(), 2)),
                        statement,
                        limit.citation())));
    }

    private static void addCheck(Check check, List<LadderReading> into) {
        Double noted = check.temperatureKelvins();
        double kelvins = noted == null ? Arrhenius.REFERENCE_KELVINS : noted;
        double slope = Math.abs(Arrhenius.WHOLE_CELL.relativeSlope(kelvins));
        double share = Math.hypot(METER_SHARE_DEVIATION, slope * (noted == null ? UNKNOWN_KELVINS_DEVIATION : 1));
        for (int cell = 1; cell <= check.cellResistanceOhms().size(); cell++) {
            double ohms = check.cellResistanceOhms().get(cell - 1) / Arrhenius.WHOLE_CELL.factor(kelvins);
            into.add(new LadderReading(
                    check.takenAt(), check.resistanceMethod(), cell, estimate(ohms, share * ohms, "meter"), 1));
        }
    }

    private static void addTrace(TraceRecord trace, List<LadderReading> into) {
        Instant startedAt = trace.startedAt();
        if (startedAt == null) {
            return;
        }
        for (TraceResistance found : trace.resistances()) {
            into.add(new LadderReading(
                    startedAt, TRACES, found.cell(), estimate(found.ohmsAt25(), found.deviationOhms(), "trace"), 1));
        }
    }

    private static Estimate estimate(double ohms, double deviation, String cause) {
        return new Estimate(ohms, deviation, List.of(new Driver(cause, deviation)));
    }
}
