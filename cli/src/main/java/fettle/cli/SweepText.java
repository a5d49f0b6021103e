package fettle.cli;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import fettle.engine.control.sweep.AngleTrack;
import fettle.engine.control.sweep.SweepResult;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.workshop.sweep.SweepAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A sweep's answer as text. */
final class SweepText {
    private SweepText() {}

    static String of(SweepAnswer answer, PackText.Detail detail) {
        SweepResult result = answer.result();
        List<String> lines = new ArrayList<>();
        lines.add("End points " + micros(result.span().lowestSeconds()) + " and "
                + micros(result.span().highestSeconds()) + ", centre "
                + micros(result.span().centreSeconds()) + ".");
        lines.add("");
        answer.read().forEach(read -> lines.addAll(Wrapped.lines("read", read)));
        figures(result, lines);
        lines.add("");
        remarks(result.remarks(), lines);
        if (answer.sinceEarlier() != null) {
            lines.add("since the earlier sweep:");
            remarks(answer.sinceEarlier().remarks(), lines);
        }
        lines.addAll(Wrapped.lines(
                "caution", result.cautions().stream().map(Caution::sentence).collect(Collectors.joining(" "))));
        WorkingText.add(result.working(), detail, lines);
        return String.join(System.lineSeparator(), lines);
    }

    private static void figures(SweepResult result, List<String> lines) {
        estimate("at rest", result.idleAmps(), TradeUnit.MILLIAMPERE, 0, lines);
        estimate("running", result.runningAmps(), TradeUnit.MILLIAMPERE, 0, lines);
        estimate("friction", result.frictionAmps(), TradeUnit.MILLIAMPERE, 0, lines);
        figure("noise of one reading", TradeUnit.MILLIAMPERE.print(result.noiseAmps(), 0), lines);
        estimate(
                "binds below",
                result.low() == null ? null : result.low().pulseSeconds(),
                TradeUnit.MICROSECOND,
                1,
                lines);
        estimate(
                "binds above",
                result.high() == null ? null : result.high().pulseSeconds(),
                TradeUnit.MICROSECOND,
                1,
                lines);
        figure("lightest around", micros(result.leastLoadSeconds()), lines);
        figure(
                "at the ends",
                String.format(
                        Locale.ROOT,
                        "%.2f A and %.2f A",
                        result.ends().lowAmps(),
                        result.ends().highAmps()),
                lines);
        AngleTrack angles = result.angles();
        if (angles != null) {
            estimate("angle for 100 µs", angles.radiansPerPulseSecond().times(1e-4), TradeUnit.DEGREE, 2, lines);
            estimate("hysteresis", angles.hysteresisRadians(), TradeUnit.DEGREE, 2, lines);
            estimate("dead band", angles.deadBandSeconds(), TradeUnit.MICROSECOND, 1, lines);
        }
    }

    private static void remarks(List<Remark> remarks, List<String> lines) {
        if (remarks.isEmpty()) {
            lines.addAll(Wrapped.lines("·", "nothing stands out"));
        }
        for (Remark remark : remarks) {
            lines.addAll(Wrapped.lines("·", remark.statement()));
            lines.addAll(Wrapped.lines("", "→ " + remark.advice()));
        }
    }

    private static void estimate(
            String label, @Nullable Estimate value, TradeUnit unit, int decimals, List<String> lines) {
        if (value != null) {
            figure(
                    label,
                    value.standardDeviation() > 0 ? unit.print(value, decimals) : unit.print(value.value(), decimals),
                    lines);
        }
    }

    private static void figure(String label, String printed, List<String> lines) {
        lines.add(String.format("%-22s %s", label, printed));
    }

    private static String micros(double seconds) {
        return TradeUnit.MICROSECOND.print(seconds, 0);
    }
}
