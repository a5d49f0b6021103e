package fettle.cli;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.GoalReached;
import fettle.engine.units.TradeUnit;
import fettle.workshop.ChoiceText;
import fettle.workshop.NowNext;
import fettle.workshop.OutingForm;
import fettle.workshop.OutingPapers;
import fettle.workshop.OutingState;
import fettle.workshop.Outings;
import fettle.workshop.outing.DayTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Outings and their plans as text. */
final class OutingText {
    private OutingText() {}

    static String of(OutingState state) {
        List<String> lines = new ArrayList<>();
        lines.add(TypedText.of(OutingForm.of(state.outing())));
        DayTimes day = Outings.times(state.outing());
        state.outing().choices().forEach(choice -> lines.add("settled: " + ChoiceText.write(choice, day)));
        KeptPlan plan = state.plan();
        lines.add("");
        lines.add(
                plan == null
                        ? "no plan yet. Make one: fettle outing plan \""
                                + state.outing().name() + "\""
                        : plan(plan, state));
        if (!state.outdated().isEmpty()) {
            lines.addAll(Wrapped.lines("!", state.outdated() + ". Plan again."));
        }
        return String.join(System.lineSeparator(), lines);
    }

    static String plan(KeptPlan plan, OutingState state) {
        DayTimes day = Outings.times(state.outing());
        List<String> lines = new ArrayList<>();
        lines.add("runs:");
        plan.runs()
                .forEach(run -> lines.add(String.format(
                        "  %-24s %s with %s",
                        day.write(run.begins(), run.ends()), run.run(), String.join(" and ", run.packs()))));
        lines.add("charges, only while somebody is there:");
        plan.charges()
                .forEach(charge -> lines.add(String.format(
                        "  %-24s %s %s, %s to %s, at most %s from %s",
                        day.write(charge.begins(), charge.ends()),
                        charge.way().replace(" " + charge.target(), ""),
                        charge.target(),
                        TradeUnit.PERCENT.print(charge.fromFraction(), 0),
                        TradeUnit.PERCENT.print(charge.toFraction(), 0),
                        TradeUnit.WATT.print(charge.sourceWatts(), 0),
                        charge.source())));
        lines.add("goals:");
        plan.goals().forEach(goal -> lines.addAll(Wrapped.lines("·", goal(goal))));
        plan.remarks().forEach(remark -> lines.addAll(Wrapped.lines("!", remark)));
        lines.addAll(Wrapped.lines(
                "",
                "Stay with every charge; set the charger to the pack's chemistry and cells. The maker's instructions and"
                        + " the club's rules come first."));
        return String.join(System.lineSeparator(), lines);
    }

    static String papers(OutingPapers papers) {
        List<String> lines = new ArrayList<>();
        lines.add("timers, at a risk of 5 %:");
        papers.timers()
                .forEach(timer -> lines.addAll(Wrapped.lines(
                        "·",
                        timer.run() + " with " + timer.pack() + ": "
                                + (timer.settingSeconds() == 0 ? "none, " : clock(timer.settingSeconds()) + ", then ")
                                + timer.binding())));
        lines.add("as baggage by air:");
        papers.packing()
                .forEach(pack -> lines.addAll(Wrapped.lines(
                        "·",
                        pack.pack() + ", " + TradeUnit.WATT_HOUR.print(pack.ratingJoules(), 1) + ": " + pack.carriage()
                                + (pack.first().isEmpty() ? "" : ". First: " + String.join("; ", pack.first())))));
        papers.counts().forEach(count -> lines.addAll(Wrapped.lines("!", count)));
        lines.addAll(Wrapped.lines("", papers.confirm()));
        return String.join(System.lineSeparator(), lines);
    }

    private static String clock(int seconds) {
        return String.format(Locale.ROOT, "%d:%02d min", seconds / 60, seconds % 60);
    }

    static String now(NowNext now, OutingState state) {
        DayTimes day = Outings.times(state.outing());
        List<String> lines = new ArrayList<>();
        section(lines, "now:", now.going(), day);
        section(lines, "next:", now.next(), day);
        section(lines, "put back not noted:", now.toPutBack(), day);
        return String.join(System.lineSeparator(), lines);
    }

    private static void section(List<String> lines, String heading, List<NowNext.Step> steps, DayTimes day) {
        lines.add(heading);
        if (steps.isEmpty()) {
            lines.add("  nothing");
        }
        steps.forEach(step ->
                lines.add(String.format("  %-24s %s", day.write(step.begins(), step.ends()), step.name())));
    }

    static String goals(KeptPlan plan) {
        return String.join(
                "; ", plan.goals().stream().limit(2).map(OutingText::goal).toList());
    }

    private static String goal(GoalReached goal) {
        String sure = goal.proven()
                ? "proven best"
                : "at most " + TradeUnit.PERCENT.print(goal.gapFraction(), 0) + " from best";
        return goal.goal() + ": " + goal.came() + " (" + sure + ")";
    }
}
