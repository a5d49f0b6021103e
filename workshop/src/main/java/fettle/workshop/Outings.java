package fettle.workshop;

import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Items;
import fettle.book.store.JournalRow;
import fettle.book.store.Stored;
import fettle.engine.outing.Choice;
import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.units.InputException;
import fettle.planner.plan.Plan;
import fettle.planner.solve.Effort;
import fettle.planner.solve.OutingPlanner;
import fettle.workshop.outing.DayTimes;
import fettle.workshop.outing.PlanKeeper;
import fettle.workshop.outing.PlanningCase;
import fettle.workshop.outing.PlanningCases;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Plans outings from the book as it is, keeps the plans, and says why they are as they are. Thread-safe. */
public final class Outings {
    private static final String PLANNED = "planned ";
    private static final int LOOK_BACK = 200;

    private final Ledger ledger;
    private final Workshop workshop;
    private final Items<Outing> items;
    private final Items<KeptPlan> plans;
    private final Map<String, Planning> plannings = new ConcurrentHashMap<>();

    Outings(Ledger ledger, Workshop workshop) {
        this.ledger = ledger;
        this.workshop = workshop;
        this.items = ledger.book().items(Shapes.OUTING);
        this.plans = ledger.book().items(Shapes.OUTING_PLAN);
    }

    /** All of them that are not put away, the next one first, then those that are over. */
    public List<OutingState> list() {
        Instant now = ledger.now();
        return workshop.outingShelf().list().stream()
                .filter(known -> !known.retired())
                .map(known -> state(known.item(), false))
                .sorted(Comparator.comparing(
                                (OutingState state) -> state.outing().ends().isBefore(now))
                        .thenComparing(state -> state.outing().begins()))
                .toList();
    }

    /** One outing; throws {@link UnknownNameException} where there is none. */
    public OutingState find(String name) {
        Registered<Outing> known = workshop.outingShelf().find(name);
        return state(known.item(), known.retired());
    }

    /** The next outing that is not over. */
    public Optional<OutingState> next() {
        Instant now = ledger.now();
        return list().stream()
                .filter(state -> state.outing().ends().isAfter(now))
                .findFirst();
    }

    private OutingState state(Outing outing, boolean putAway) {
        Optional<Stored<KeptPlan>> latest = ledger.use(plans::all).stream()
                .filter(stored -> stored.item().outing().equals(outing.name()))
                .max(Comparator.comparingLong(Stored::id));
        KeptPlan plan = latest.map(Stored::item).orElse(null);
        return new OutingState(outing, plan, plan == null ? "" : outdated(plan), putAway);
    }

    /** What was changed of the outing or of its packs after the plan was kept; the latest change counts. */
    private String outdated(KeptPlan plan) {
        String planned = PLANNED + plan.outing() + ":";
        Set<String> subjects = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        subjects.add(plan.outing());
        subjects.addAll(workshop.outingShelf().find(plan.outing()).item().packs());
        return workshop.history().recent(0, LOOK_BACK).stream()
                .takeWhile(entry -> entry.undone() || !entry.sentence().startsWith(planned))
                .filter(entry -> !entry.undone() && subjects.contains(entry.subject()))
                .findFirst()
                .map(entry -> "since the plan was made: " + entry.sentence())
                .orElse("");
    }

    /**
     * Plans and keeps the plan; returns when it is proven best, the time is up or progress says to stop.
     *
     * @param progress hears of the best plan so far; says whether to go on
     * @throws InputException if the outing cannot be planned, with the reason
     */
    public KeptPlan plan(String name, PlanSpeed speed, Predicate<KeptPlan> progress) {
        PlanningCase made = prepare(name);
        Plan plan = OutingPlanner.plan(
                made.problem(),
                Effort.seconds(speed.seconds()),
                best -> progress.test(PlanKeeper.keep(made, best, ledger.now())));
        KeptPlan kept = PlanKeeper.keep(made, plan, ledger.now());
        keep(kept);
        return kept;
    }

    private JournalEntry keep(KeptPlan kept) {
        String sentence = PLANNED + kept.outing() + ": " + kept.runs().size() + " runs, "
                + kept.charges().size() + " charges" + (kept.provenBest() ? ", proven best" : "");
        return ledger.use(() -> {
            JournalRow row = plans.add(kept, Row.empty(), ledger.note(sentence, kept.outing()));
            return Ledger.fresh(row);
        });
    }

    /** Starts planning in the background; a planning of the same outing that runs is joined. */
    public Planning start(String name, PlanSpeed speed) {
        String known = workshop.outingShelf().find(name).name();
        Planning planning = plannings.compute(
                known.toLowerCase(Locale.ROOT),
                (key, running) -> running != null && running.progress().running() ? running : begin(known, speed));
        return planning;
    }

    /** The planning of an outing that runs or ran last in this process. */
    public Optional<Planning> planning(String name) {
        return Optional.ofNullable(plannings.get(name.toLowerCase(Locale.ROOT)));
    }

    private Planning begin(String name, PlanSpeed speed) {
        Planning planning = new Planning(name);
        Thread thread = new Thread(() -> search(planning, name, speed), "planning " + name);
        thread.setDaemon(true);
        thread.start();
        return planning;
    }

    private void search(Planning planning, String name, PlanSpeed speed) {
        try {
            KeptPlan kept = plan(name, speed, planning::goOn);
            planning.goOn(kept);
            planning.done();
        } catch (InputException | BookException | UnknownNameException refused) {
            planning.refused(String.valueOf(refused.getMessage()));
        }
    }

    void stopAll() {
        plannings.values().forEach(Planning::cancel);
    }

    /** The problem of what is still to come of an outing. */
    PlanningCase prepare(String name) {
        return ledger.together(() -> {
            OutingState state = find(name);
            return PlanningCases.of(state.outing(), new DayKits(workshop).of(state), ledger.now());
        });
    }

    /** What the latest plan does with a pack or a run, or the constraint that keeps it out. */
    public List<String> why(String name, String subject) {
        OutingState state = find(name);
        return new Reasons(state, () -> prepare(name)).of(subject.strip());
    }

    /**
     * Settles something, so that every later plan keeps it.
     *
     * @param typed e.g. {@code Harrier 1 with P07}, {@code Harrier 2 at 10:30}, {@code no Harrier 3}, {@code not P07}, or the
     *     name of a planned charge
     */
    public JournalEntry settle(String name, String typed) {
        OutingState state = find(name);
        Choice choice = new ChoiceText(state).read(typed);
        List<Choice> choices = new ArrayList<>(state.outing().choices());
        choices.removeIf(choice::sameMatter);
        choices.add(choice);
        return replace(
                state.outing(),
                state.outing().withChoices(choices),
                "settled for",
                ChoiceText.write(choice, times(state.outing())));
    }

    /** Takes back what was settled with the same words. */
    public JournalEntry unsettle(String name, String typed) {
        OutingState state = find(name);
        Choice choice = new ChoiceText(state).read(typed);
        List<Choice> choices = new ArrayList<>(state.outing().choices());
        if (!choices.removeIf(choice::sameMatter)) {
            throw new InputException("what", "\"" + typed.strip() + "\" was not settled. See: outing show.");
        }
        return replace(
                state.outing(),
                state.outing().withChoices(choices),
                "left open for",
                ChoiceText.write(choice, times(state.outing())));
    }

    /** What to take along: timers of the planned runs, and the packs as baggage. */
    public OutingPapers papers(String name) {
        return ledger.together(() -> new Papers(workshop, find(name)).made());
    }

    /** What to do now and next. */
    public NowNext now(String name) {
        return NowNext.of(find(name), ledger.now());
    }

    /** Notes that a planned run or charge has begun now. */
    public JournalEntry began(String name, String subject) {
        return note(name, subject, Step.BEGIN, null);
    }

    /** Notes that a planned run or charge has ended now. */
    public JournalEntry ended(String name, String subject) {
        return note(name, subject, Step.END, null);
    }

    /**
     * Notes what was put back into the packs of a run; the packs' own record gets the run and the charge.
     *
     * @param coulombs charge put back into each pack [C]
     */
    public JournalEntry putBack(String name, String run, double coulombs) {
        return note(name, run, Step.PUT_BACK, coulombs);
    }

    private enum Step {
        BEGIN("begun"),
        END("ended"),
        PUT_BACK("put back after");

        private final String word;

        Step(String word) {
            this.word = word;
        }
    }

    private JournalEntry note(String name, String subject, Step step, @Nullable Double coulombs) {
        return ledger.together(() -> {
            OutingState state = find(name);
            Happenings happenings = new Happenings(state, ledger.now());
            List<Happened> after = switch (step) {
                case BEGIN -> happenings.begun(subject);
                case END -> happenings.ended(subject);
                case PUT_BACK -> happenings.putBack(subject, Objects.requireNonNull(coulombs));
            };
            if (step == Step.PUT_BACK) {
                happenings.enter(subject, Objects.requireNonNull(coulombs), workshop);
            }
            return replace(state.outing(), state.outing().withHappened(after), step.word, happenings.named(subject));
        });
    }

    private JournalEntry replace(Outing present, Outing changed, String verb, String what) {
        return ledger.together(() -> {
            Stored<Outing> stored = workshop.outingShelf().stored(present.name());
            String sentence = present.name() + ": " + verb + " " + what;
            return Ledger.fresh(items.replace(stored.id(), changed, ledger.note(sentence, present.name())));
        });
    }

    /** How its times are written. */
    public static DayTimes times(Outing outing) {
        return new DayTimes(outing.date(), outing.zoneId());
    }
}
