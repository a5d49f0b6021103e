package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.PackModel;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.planner.timer.RunDemand;
import fettle.planner.timer.TimerAnswer;
import fettle.planner.timer.TimerQuestion;
import fettle.planner.timer.TimerReview;
import fettle.workshop.TypedLines;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** How long a timer is set, and what a run says of it afterwards. */
final class TimerSheet {
    private static final int SECONDS_A_MINUTE = 60;

    static final Worksheet WORKSHEET = new Worksheet(
            "timer",
            "Set a timer",
            "After what time is the weakest cell at its reserve or its under-load minimum, at a stated risk?",
            PackFields.with(
                    WorksheetField.lines(
                            "runs",
                            "Earlier runs",
                            "One a line: time; charge put back, or mean current. E.g. 6 min; 1800 mAh, or 6 min; 18 A"),
                    WorksheetField.line("peak", "Peak current", "Of the craft, in A. May be left out.", ""),
                    WorksheetField.line(
                            "risk", "Risk", "Share of runs that may come to the limit before the timer.", "5 %"),
                    WorksheetField.line(
                            "after", "The run afterwards", "Time; charge put back: compares and corrects.", "")),
            TimerSheet::answer);

    private TimerSheet() {}

    static Sheet answer(Typed typed) {
        Chemistry chemistry = PackFields.chemistry(typed);
        List<RunDemand> runs = typed.read(
                "runs",
                () -> TypedLines.read("runs", typed.word("runs"), line -> run("runs", line, chemistry)),
                List.of(new RunDemand(3600, 360, List.of())));
        OptionalDouble peak = typed.optional("peak", Measure.CURRENT, TradeUnit.AMPERE);
        double risk = typed.quantity("risk", Measure.FRACTION, TradeUnit.PERCENT, 0.05);
        List<RunDemand> after = typed.read(
                "after",
                () -> TypedLines.read("after", typed.word("after"), line -> run("after", line, chemistry)),
                List.<RunDemand>of());
        PackModel pack = PackFields.pack(typed);
        return typed.make(() -> sheet(
                TimerAnswer.of(new TimerQuestion(
                        pack, PackFields.limits(chemistry), runs, peak.isPresent() ? peak.getAsDouble() : null, risk)),
                after.isEmpty() ? null : after.get(0)));
    }

    private static RunDemand run(String field, String line, Chemistry chemistry) {
        String[] parts = line.strip().split("\\s*;\\s*");
        if (parts.length != 2) {
            throw new InputException(
                    field,
                    "\"" + line.strip() + "\" is not a run; expected time; charge put back, e.g. 6 min; 1800 mAh.");
        }
        double seconds = QuantityText.si(field, "run time", parts[0], Measure.DURATION, TradeUnit.MINUTE);
        return QuantityText.measures(parts[1], Measure.CURRENT)
                ? new RunDemand(
                        seconds * QuantityText.si(field, "mean current", parts[1], Measure.CURRENT, null),
                        seconds,
                        List.of())
                : RunDemand.ofPutBack(
                        chemistry,
                        QuantityText.si(field, "charge put back", parts[1], Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR),
                        seconds);
    }

    private static Sheet sheet(TimerAnswer answer, @Nullable RunDemand after) {
        List<String> notes = new ArrayList<>(answer.remarks());
        List<String> spread = answer.quantiles().stream()
                .map(point -> TradeUnit.PERCENT.print(point.probability(), 0) + " sooner than "
                        + clock((int) point.seconds()))
                .toList();
        notes.add("Of runs like these: " + String.join(", ", spread) + ".");
        if (after != null) {
            notes.add(0, TimerReview.of(answer, after).statement());
        }
        return new Sheet(
                "Set " + clock(answer.settingSeconds()) + " min: with a risk of "
                        + TradeUnit.PERCENT.print(answer.question().risk(), 0)
                        + " the limit comes before; first met is "
                        + answer.binding() + ".",
                List.of(
                        Figure.exact("setting", "Timer", answer.settingSeconds(), TradeUnit.MINUTE, 2),
                        Figure.of(
                                "typical",
                                "A typical run meets the limit at",
                                answer.typicalSeconds(),
                                TradeUnit.MINUTE,
                                1),
                        Figure.of("amps", "Mean current of the next run", answer.amps(), TradeUnit.AMPERE, 1),
                        Figure.of(
                                "put_back",
                                "Put-back to expect",
                                answer.putBackCoulombs(),
                                TradeUnit.MILLIAMPERE_HOUR,
                                0)),
                notes,
                Cautions.TIMING,
                answer.working());
    }

    /** {@code 5:40}. */
    private static String clock(int seconds) {
        return String.format(Locale.ROOT, "%d:%02d", seconds / SECONDS_A_MINUTE, seconds % SECONDS_A_MINUTE);
    }
}
