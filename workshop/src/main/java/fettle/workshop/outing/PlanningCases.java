package fettle.workshop.outing;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.outing.Attended;
import fettle.engine.outing.Choice;
import fettle.engine.outing.Happened;
import fettle.engine.outing.Outing;
import fettle.engine.outing.RunWish;
import fettle.engine.outing.Spot;
import fettle.engine.rule.Quantity;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Goal;
import fettle.planner.problem.GoalSetting;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.PackSet;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.Presence;
import fettle.planner.problem.RunWanted;
import fettle.planner.problem.Span;
import fettle.planner.problem.Target;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the problem of one outing from a moment on. Used once. */
public final class PlanningCases {
    /** Waits after a charge and after a run [min]: common practice, no source. */
    static final int REST_MINUTES = 10;

    static final int COOL_MINUTES = 20;

    private final Outing outing;
    private final DayKit kit;
    private final DayClock clock;
    private final int horizon;
    private final List<String> remarks = new ArrayList<>();
    private final List<String> inputs = new ArrayList<>();

    private PlanningCases(Outing outing, DayKit kit, Instant now) {
        this.outing = outing;
        this.kit = kit;
        this.clock = DayClock.startingAt(now.isAfter(outing.begins()) ? now : outing.begins());
        this.horizon = clock.minuteNotAfter(outing.ends());
    }

    /**
     * The problem of what is still to come.
     *
     * @throws InputException if the outing is over, or what a run takes is not known
     */
    public static PlanningCase of(Outing outing, DayKit kit, Instant now) {
        return new PlanningCases(outing, kit, now).made();
    }

    private PlanningCase made() {
        if (horizon < DayClock.STEP_MINUTES) {
            throw new InputException(
                    "name", outing.name() + " is over; nothing is left to plan. Make a new outing, or move its times.");
        }
        List<PackAtHand> usable =
                kit.packs().stream().filter(PackAtHand::usable).toList();
        kit.packs().stream()
                .filter(hand -> !hand.usable())
                .forEach(hand -> remarks.add(hand.tag() + " is left out: " + hand.leftOutBecause()));
        List<Presence> presence = outing.attended().stream()
                .flatMap(attended -> presence(attended).stream())
                .toList();
        MeansMaker means = new MeansMaker(outing, kit, clock, horizon, remarks, inputs);
        OutingProblem.Means made = means.of(usable);
        List<RunWanted> runs = runs(usable);
        List<Lock> locks = locks(made.ways(), runs, usable);
        List<PlanPack> packs = usable.stream().map(this::pack).toList();
        OutingProblem problem = new OutingProblem(
                new OutingProblem.Time(horizon, DayClock.STEP_MINUTES), presence, made, packs, runs, locks, goals());
        return new PlanningCase(outing, kit, clock, problem, inputs, remarks);
    }

    private Optional<Presence> presence(Attended attended) {
        int from = Math.max(0, clock.minuteNotBefore(attended.from()));
        int to = Math.min(horizon, clock.minuteNotAfter(attended.until()));
        return to > from ? Optional.of(new Presence(place(attended.spot()), new Span(from, to))) : Optional.empty();
    }

    static Place place(Spot spot) {
        return spot == Spot.HOME ? Place.HOME : Place.FIELD;
    }

    private PlanPack pack(PackAtHand hand) {
        RestCurve curve = DefaultCurves.of(hand.pack().chemistry());
        double low = curve.charge(hand.limits().si(Quantity.STORAGE_LOW));
        double high = Math.min(0.95, curve.charge(hand.limits().si(Quantity.STORAGE_HIGH)));
        low = Math.min(low, high - 0.02);
        int storageBy = Math.min(horizon, Math.max(0, clock.minuteNotAfter(outing.storageBy())));
        Instant free = hand.freeAt();
        int freeAt = free == null ? 0 : Math.max(0, clock.minuteNotBefore(free));
        inputs.add(hand.tag() + ": " + hand.assessment().standing().word() + ", charge "
                + TradeUnit.PERCENT.print(hand.chargeFraction(), 0) + " (lower end of what is known), capacity "
                + TradeUnit.MILLIAMPERE_HOUR.print(hand.capacityCoulombs(), 0));
        return new PlanPack(
                hand.tag(),
                hand.assessment().standing(),
                hand.chargeFraction(),
                new PlanPack.Levels(hand.limits().si(Quantity.RESERVE), low, 0.5 * (low + high), high, 1),
                new PlanPack.Times(freeAt, REST_MINUTES, COOL_MINUTES, storageBy),
                FullWeight.of(hand, outing.ambientKelvins()));
    }

    private List<RunWanted> runs(List<PackAtHand> usable) {
        List<RunWanted> runs = new ArrayList<>();
        for (Outing.NamedRun run : outing.runs()) {
            if (outing.happened().stream().anyMatch(done -> done.isOf(Happened.Kind.RUN, run.name()))) {
                continue;
            }
            RunWish wish = run.wish();
            int earliest = Math.max(0, clock.minuteNotBefore(wish.earliest()));
            int latest = Math.min(horizon, clock.minuteNotAfter(wish.latest()));
            if (latest < earliest) {
                remarks.add(run.name() + " is left out: its latest start is over.");
                continue;
            }
            List<PackSet> fits = PackFit.sets(wish, kit, usable);
            if (fits.isEmpty()) {
                remarks.add(run.name() + ": none of the packs that can be planned fits " + wish.craft() + ".");
            }
            RunWanted.Times times = new RunWanted.Times(
                    earliest,
                    latest,
                    Math.max(1, DayClock.minutesUp(wish.durationSeconds())),
                    DayClock.minutesUp(wish.gapSeconds()));
            runs.add(new RunWanted(run.name(), wish.craft(), wish.value(), times, fits));
        }
        return runs;
    }

    private List<Lock> locks(List<ChargeWay> ways, List<RunWanted> runs, List<PackAtHand> usable) {
        List<Lock> locks = new ArrayList<>();
        for (Choice choice : outing.choices()) {
            Optional<Lock> lock = lock(choice, ways, runs, usable);
            lock.ifPresent(locks::add);
        }
        outing.happened().stream()
                .filter(done -> done.kind() == Happened.Kind.CHARGE && done.ended() == null)
                .forEach(going -> way(going.subject(), ways)
                        .ifPresentOrElse(
                                way -> locks.add(new Lock.ChargeAt(way.name(), 0, target(going.subject()))),
                                () -> remarks.add(going.subject() + " goes on, but is no way to charge any more.")));
        return locks;
    }

    private Optional<Lock> lock(Choice choice, List<ChargeWay> ways, List<RunWanted> runs, List<PackAtHand> usable) {
        Optional<RunWanted> run = runs.stream()
                .filter(one -> one.name().equalsIgnoreCase(choice.subject()))
                .findFirst();
        int start = choice.at() == null
                ? 0
                : Math.floorDiv(clock.minuteNotBefore(choice.at()), DayClock.STEP_MINUTES) * DayClock.STEP_MINUTES;
        Optional<Lock> lock = switch (choice.kind()) {
            case RUN_PACKS ->
                run.filter(one -> one.fits().stream()
                                .anyMatch(set -> List.copyOf(set.tags()).equals(choice.packs())))
                        .map(one -> new Lock.RunWith(one.name(), choice.packs()));
            case RUN_START -> run.filter(one -> start >= 0).map(one -> new Lock.RunAt(one.name(), start));
            case RUN_OUT -> run.map(one -> new Lock.RunNot(one.name()));
            case PACK_OUT ->
                choice.packs().stream()
                        .findFirst()
                        .filter(tag ->
                                usable.stream().anyMatch(hand -> hand.tag().equals(tag)))
                        .map(Lock.PackNot::new);
            case CHARGE_START ->
                way(choice.subject(), ways)
                        .filter(one -> start >= 0)
                        .map(one -> new Lock.ChargeAt(one.name(), start, target(choice.subject())));
        };
        boolean past =
                outing.happened().stream().anyMatch(done -> done.subject().equalsIgnoreCase(choice.subject()));
        if (lock.isEmpty() && !past) {
            remarks.add("what is settled of " + choice.subject() + String.join(" ", choice.packs())
                    + " no longer fits and is passed over: " + choice.kind().label() + ".");
        }
        return lock;
    }

    /** A charge is named by its way and, where it goes to storage, the word behind it. */
    private static Optional<ChargeWay> way(String subject, List<ChargeWay> ways) {
        return ways.stream()
                .filter(way -> ChargeNames.wayOf(subject).equals(way.name()))
                .findFirst();
    }

    private static Target target(String subject) {
        return ChargeNames.isToStorage(subject) ? Target.STORAGE : Target.FULL;
    }

    private List<GoalSetting> goals() {
        List<Goal> order =
                new ArrayList<>(outing.goals().stream().map(Goal::valueOf).toList());
        GoalSetting.usualOrder().stream()
                .map(GoalSetting::goal)
                .filter(goal -> !order.contains(goal))
                .forEach(order::add);
        return order.stream().map(GoalSetting::usual).toList();
    }
}
