package fettle.desk.outing;

import fettle.desk.frame.Back;
import fettle.desk.frame.Figures;
import fettle.desk.outing.NowPage.Card;
import fettle.desk.outing.OutingPage.Fact;
import fettle.desk.outing.OutingPage.GoalLine;
import fettle.desk.outing.OutingPage.Line;
import fettle.desk.outing.OutingPage.SearchPart;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.supply.Source;
import fettle.engine.units.TradeUnit;
import fettle.workshop.ChoiceText;
import fettle.workshop.NowNext;
import fettle.workshop.OutingForm;
import fettle.workshop.OutingState;
import fettle.workshop.Outings;
import fettle.workshop.Planning;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import fettle.workshop.outing.DayTimes;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes the pages of outings. */
final class OutingPages {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final int MOST_NEXT = 40;

    private final Workshop workshop;
    private final Figures figures;

    OutingPages(Workshop workshop, Figures figures) {
        this.workshop = workshop;
        this.figures = figures;
    }

    static String href(String name) {
        return "/outings/day?name=" + Back.encode(name);
    }

    OutingsPage list() {
        Map<Boolean, List<OutingState>> byTime = workshop.outings().list().stream()
                .collect(
                        Collectors.partitioningBy(state -> state.outing().ends().isAfter(figures.now())));
        return new OutingsPage(
                byTime.getOrDefault(true, List.of()).stream().map(this::line).toList(),
                byTime.getOrDefault(false, List.of()).stream().map(this::line).toList(),
                workshop.outingShelf().list().stream()
                        .filter(Registered::retired)
                        .map(Registered::name)
                        .toList());
    }

    private OutingsPage.Line line(OutingState state) {
        Outing outing = state.outing();
        KeptPlan plan = state.plan();
        String planned = plan == null
                ? "no plan yet"
                : plan.runs().size() + " of " + outing.runs().size() + " runs planned"
                        + (state.outdated().isEmpty() ? "" : ", out of date");
        return new OutingsPage.Line(
                outing.name(),
                href(outing.name()),
                DAY.format(outing.date()),
                String.valueOf(outing.runs().size()),
                planned);
    }

    /** What a person has just asked or typed on the page of an outing. */
    record Said(String asked, List<String> reasons, String typed, List<String> faults) {
        static final Said NOTHING = new Said("", List.of(), "", List.of());
    }

    OutingPage day(OutingState state, Optional<Planning> planning, Said said) {
        Outing outing = state.outing();
        DayTimes day = Outings.times(outing);
        KeptPlan plan = state.plan();
        return new OutingPage(
                outing.name(),
                Back.encode(outing.name()),
                DAY.format(outing.date()) + ", "
                        + day.write(outing.times().leaveHome(), outing.times().backHome()) + " (" + outing.zone() + ")",
                facts(outing),
                outing.choices().stream()
                        .map(choice -> ChoiceText.write(choice, day))
                        .toList(),
                plan == null
                        ? ""
                        : figures.moment(plan.madeAt()) + ", searched for "
                                + String.format(Locale.ROOT, "%.1f s", plan.seconds()),
                state.outdated(),
                plan == null || plan.charges().isEmpty() && plan.runs().isEmpty()
                        ? null
                        : new DaySheets(outing, plan, limits()).sheet(),
                plan == null
                        ? List.of()
                        : plan.runs().stream().map(run -> run(run, day)).toList(),
                plan == null
                        ? List.of()
                        : plan.charges().stream()
                                .map(charge -> charge(charge, day))
                                .toList(),
                plan == null
                        ? List.of()
                        : plan.goals().stream().map(OutingPage::goal).toList(),
                plan == null ? List.of() : plan.remarks(),
                plan == null ? List.of() : plan.inputs(),
                planning.map(this::shown).orElse(null),
                said.asked(),
                said.reasons(),
                said.typed(),
                said.faults(),
                state.putAway());
    }

    private @Nullable SearchPart shown(Planning planning) {
        SearchPart part = search(planning);
        return part.running() || !part.trouble().isEmpty() ? part : null;
    }

    SearchPart search(Planning planning) {
        Planning.Progress progress = planning.progress();
        KeptPlan best = progress.best();
        List<GoalLine> goals = best == null
                ? List.of()
                : best.goals().stream().map(OutingPage::goal).toList();
        String words = best == null
                ? progress.state().word()
                : "a usable plan is there; " + progress.state().word() + " for a better one, "
                        + Math.round(best.seconds()) + " s";
        return new SearchPart(Back.encode(progress.outing()), progress.running(), words, progress.trouble(), goals);
    }

    private Map<String, Double> limits() {
        return workshop.sources().list().stream()
                .map(Registered::item)
                .collect(Collectors.toMap(Source::name, Source::maxWatts));
    }

    private static List<Fact> facts(Outing outing) {
        OutingForm typed = OutingForm.of(outing);
        return List.of(
                new Fact("Runs wanted", typed.runs()),
                new Fact("Packs", typed.packs()),
                new Fact("Somebody is there", typed.attended()),
                new Fact("Chargers", typed.feeds()),
                new Fact("Arrive, pack up", typed.arrive() + ", " + typed.packUp()),
                new Fact("At the field", typed.ambient()),
                new Fact("At storage by", typed.storageBy()),
                new Fact("Goals", typed.goals().isEmpty() ? "in the usual order" : typed.goals()));
    }

    private static Line run(KeptPlan.PlannedRun run, DayTimes day) {
        return new Line(
                day.write(run.begins(), run.ends()),
                run.run(),
                String.join(" + ", run.packs()),
                "cools until " + day.write(run.coolUntil()));
    }

    private static Line charge(KeptPlan.PlannedCharge charge, DayTimes day) {
        return new Line(
                day.write(charge.begins(), charge.ends()),
                charge.port() + ", " + charge.target(),
                String.join(" + ", charge.packs()),
                TradeUnit.PERCENT.print(charge.fromFraction(), 0) + " to "
                        + TradeUnit.PERCENT.print(charge.toFraction(), 0)
                        + (charge.sourceWatts() > 0
                                ? ", at most " + TradeUnit.WATT.print(charge.sourceWatts(), 0) + " and "
                                        + TradeUnit.WATT_HOUR.print(charge.sourceJoules(), 0) + " from "
                                        + charge.source()
                                : "")
                        + setting(charge));
    }

    /** The current to set, which is the end of the name of a way to charge. */
    private static String setting(KeptPlan.PlannedCharge charge) {
        int at = charge.way().lastIndexOf(" at ");
        return at < 0 ? "" : "; set " + charge.way().substring(at + 4).replace(" to storage", "");
    }

    NowPage now(OutingState state, NowNext now, List<String> faults) {
        DayTimes day = Outings.times(state.outing());
        Instant moment = now.now();
        return new NowPage(
                now.outing(),
                Back.encode(now.outing()),
                CLOCK.format(moment.atZone(state.outing().zoneId())),
                now.going().stream()
                        .map(step -> card(step, day, step.ends(), moment))
                        .toList(),
                now.next().stream()
                        .limit(MOST_NEXT)
                        .map(step -> card(step, day, step.begins(), moment))
                        .toList(),
                now.toPutBack().stream()
                        .map(step -> card(step, day, step.ends(), moment))
                        .toList(),
                faults);
    }

    private static Card card(NowNext.Step step, DayTimes day, Instant counted, Instant now) {
        boolean late = counted.isBefore(now);
        Duration apart = Duration.between(now, counted).abs();
        String due = (late ? "" : "in ") + Figures.span(apart) + (late ? " ago" : "");
        return new Card(step.name(), step.what(), day.write(step.begins(), step.ends()), due, late, step.caution());
    }
}
