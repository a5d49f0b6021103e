package fettle.engine.trace;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the events of a pack's traces mean for its standing, until a person says that they were looked into. One finding a
 * kind, with the worst of it. Which standing a kind allows: common practice, no source.
 */
public final class EventFindings {
    /** Every finding of this class begins so. */
    public static final String PREFIX = "trace-";

    private static final Citation LIMITS = Citation.commonPractice("what a log shows past a limit is looked into");

    private EventFindings() {}

    /**
     * One event with where it stands.
     *
     * @param trace number of the trace
     * @param startedAt time 0 of the trace's clock, if known
     */
    private record Placed(long trace, TraceRecord record, TraceEvent event) {
        String when() {
            Instant startedAt = record.startedAt();
            String day = startedAt == null
                    ? ""
                    : " on "
                            + TraceUses.at(startedAt, event.atSeconds())
                                    .atOffset(ZoneOffset.UTC)
                                    .toLocalDate();
            return day + " (trace " + trace + ")";
        }
    }

    /**
     * The findings of the traces whose events nobody has looked into yet.
     *
     * @param numbers number of each trace
     */
    public static List<Finding> of(List<TraceRecord> traces, List<Long> numbers) {
        List<Placed> open = new ArrayList<>();
        for (int i = 0; i < traces.size(); i++) {
            TraceRecord trace = traces.get(i);
            long number = numbers.get(i);
            if (trace.acknowledged().isEmpty()) {
                trace.events().forEach(event -> open.add(new Placed(number, trace, event)));
            }
        }
        return Stream.of(EventKind.values())
                .map(kind -> open.stream()
                        .filter(placed -> placed.event().kind() == kind)
                        .toList())
                .filter(alike -> !alike.isEmpty())
                .map(EventFindings::finding)
                .toList();
    }

    private static Finding finding(List<Placed> alike) {
        EventKind kind = alike.get(0).event().kind();
        Placed worst = alike.stream()
                .max(Comparator.comparingDouble(placed -> badness(placed.event())))
                .orElseThrow();
        String others = alike.size() == 1 ? "" : "; " + alike.size() + " times in all";
        String statement = worst.event().sentence() + worst.when() + others;
        return new Finding(
                PREFIX + kind.key(),
                standing(kind),
                statement,
                advice(kind) + " Then say so: trace acknowledge " + worst.trace() + ".",
                Working.of(new Step(
                        kind.label(),
                        "samples of the log against the limit",
                        List.of(
                                "worst = " + kind.print(worst.event().worstSi()),
                                "limit, or what it was before = "
                                        + kind.print(worst.event().limitSi()),
                                "times = " + alike.size()),
                        statement,
                        LIMITS)));
    }

    /** How far past its limit, whichever way that is. */
    private static double badness(TraceEvent event) {
        return Math.abs(event.worstSi() - event.limitSi());
    }

    private static Standing standing(EventKind kind) {
        return switch (kind) {
            case OVER_CHARGE, OVER_TEMPERATURE, CELL_COLLAPSE -> Standing.GROUNDED;
            case CHARGED_COLD -> Standing.UNPROVEN;
            case UNDER_VOLTAGE, RESISTANCE_STEP -> Standing.LIMITED;
            case OVER_CURRENT, OVER_CHARGE_CURRENT, CHARGED_HOT -> Standing.TEND;
        };
    }

    private static String advice(EventKind kind) {
        return switch (kind) {
            case UNDER_VOLTAGE ->
                "Rest it an hour and read every cell; shorten the run or lighten the load until no cell goes so low.";
            case OVER_CHARGE ->
                "Stop using the charger that did it until its end volts are measured; look for swelling and read every"
                        + " cell after a day.";
            case OVER_CURRENT ->
                "Look for heat and swelling; lighten the load to its rating, or fit a pack that carries it.";
            case OVER_CHARGE_CURRENT -> "Look for heat and swelling; set the charger to its rating.";
            case OVER_TEMPERATURE ->
                "Let it cool where it cannot burn anything, look for swelling and smell, and read every cell after a day.";
            case CHARGED_COLD ->
                "Charging in the cold can plate metal inside and short a cell later: keep it apart, and read the cells"
                        + " over some days for one that leaks.";
            case CHARGED_HOT -> "Look for swelling; let it cool before the next charge.";
            case RESISTANCE_STEP -> "Look at its plug, its solder joints and its tabs, then log another run.";
            case CELL_COLLAPSE ->
                "One cell gave way under load: read every cell after an hour's rest, and retire the pack if it is low or"
                        + " does it again.";
        };
    }
}
