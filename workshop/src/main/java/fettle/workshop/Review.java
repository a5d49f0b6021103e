package fettle.workshop;

import fettle.book.record.Shapes;
import fettle.book.store.Stored;
import fettle.engine.charge.Task;
import fettle.engine.charge.TaskPlanner;
import fettle.engine.health.PackHealth;
import fettle.engine.health.ResistanceLadder;
import fettle.engine.health.leakage.CellLeak;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import fettle.engine.pack.assessment.PackAssessor;
import fettle.engine.rule.RuleSet;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import fettle.engine.trace.EventFindings;
import fettle.engine.trace.TraceRecord;
import fettle.engine.trace.TraceUses;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Assesses packs as they are now. Nothing it answers is stored. Thread-safe. */
public final class Review {
    private static final Comparator<PackReview> WORST_FIRST = Comparator.comparing(
                    (PackReview review) -> review.assessment().standing())
            .reversed()
            .thenComparing(review -> review.assessment().pack().tag(), NameOrder.NATURAL);

    /** Tasks due at once stay in the order of their packs: the worst standing first. */
    private static final Comparator<Task> SOONEST_FIRST =
            Comparator.comparing(Task::due, Comparator.nullsLast(Comparator.naturalOrder()));

    private static final long TOGETHER_DAYS = 31;
    private static final String NO_EVENTS = "nothing in its traces past a limit that was not looked into";

    private final Ledger ledger;
    private final Workshop workshop;

    Review(Ledger ledger, Workshop workshop) {
        this.ledger = ledger;
        this.workshop = workshop;
    }

    /** The morning review of every pack in use. */
    public ShelfReview shelf() {
        return ledger.together(() -> {
            Bench bench = bench();
            List<PackReview> packs = ledger.book().items(Shapes.PACK).all().stream()
                    .filter(pack -> !pack.retired())
                    .map(this::evidence)
                    .map(file -> review(file, health(file, bench), bench))
                    .sorted(WORST_FIRST)
                    .toList();
            List<Task> tasks = packs.stream()
                    .flatMap(pack -> pack.tasks().stream())
                    .sorted(SOONEST_FIRST)
                    .toList();
            return new ShelfReview(bench.now(), packs, tasks);
        });
    }

    /** Every pack in use, by tag, without what only its page shows. */
    public List<KnownPack> inUse() {
        return ledger.together(() -> {
            Bench bench = bench();
            return ledger.book().items(Shapes.PACK).all().stream()
                    .filter(pack -> !pack.retired())
                    .map(pack -> known(pack, bench))
                    .sorted(Comparator.comparing(
                            (KnownPack known) -> known.pack().tag(), NameOrder.NATURAL))
                    .toList();
        });
    }

    /** One pack without what only its page shows; throws {@link UnknownNameException} where there is none. */
    public KnownPack known(String tag) {
        return ledger.together(() -> known(workshop.packs().stored(tag), bench()));
    }

    /** What was noted of every pack, retired ones too. */
    public List<PackHistory> histories() {
        return ledger.together(() -> ledger.book().items(Shapes.PACK).all().stream()
                .map(this::history)
                .sorted(Comparator.comparing(
                        (PackHistory history) -> history.pack().tag(), NameOrder.NATURAL))
                .toList());
    }

    private KnownPack known(Stored<Pack> stored, Bench bench) {
        Evidence evidence = evidence(stored);
        return new KnownPack(
                inUseOrNot(stored, review(evidence, health(evidence, bench), bench))
                        .assessment(),
                evidence.noted());
    }

    /** The review of a pack; that of a retired one has no tasks. */
    private static PackReview inUseOrNot(Stored<Pack> stored, PackReview inUse) {
        return stored.retired() ? new PackReview(inUse.assessment().retired(), List.of()) : inUse;
    }

    /** One pack in full; throws {@link UnknownNameException} where there is none. A retired one has no tasks. */
    public PackFile pack(String tag) {
        return ledger.together(() -> {
            Stored<Pack> stored = workshop.packs().stored(tag);
            Evidence evidence = evidence(stored);
            Bench bench = bench();
            PackHealth health = health(evidence, bench);
            PackReview review = inUseOrNot(stored, review(evidence, health, bench));
            Pack pack = stored.item();
            return new PackFile(
                    review,
                    health,
                    stored.retired(),
                    evidence.noted(),
                    evidence.exceptions(),
                    alike(stored, bench),
                    workshop.rules().inForce(pack.chemistry(), pack.tag()));
        });
    }

    private List<AlikePack> alike(Stored<Pack> pack, Bench bench) {
        List<AlikePack> alike = ledger.book().items(Shapes.PACK).all().stream()
                .filter(other -> !other.retired() || other.id() == pack.id())
                .filter(other -> boughtTogether(pack.item(), other.item()))
                .map(other -> alike(evidence(other), bench))
                .sorted(Comparator.comparing(AlikePack::tag, NameOrder.NATURAL))
                .toList();
        return alike.size() > 1 ? alike : List.of();
    }

    private static boolean boughtTogether(Pack one, Pack other) {
        LocalDate first = one.bought();
        LocalDate second = other.bought();
        return one.chemistry() == other.chemistry()
                && one.cellsInSeries() == other.cellsInSeries()
                && one.cellsInParallel() == other.cellsInParallel()
                && Double.compare(one.ratedCapacityCoulombs(), other.ratedCapacityCoulombs()) == 0
                && first != null
                && second != null
                && Math.abs(ChronoUnit.DAYS.between(first, second)) <= TOGETHER_DAYS;
    }

    private static AlikePack alike(Evidence evidence, Bench bench) {
        PackHealth health = health(evidence, bench);
        Assessment state = review(evidence, health, bench).assessment();
        return new AlikePack(
                state.pack().tag(),
                state.pack().bought(),
                state.standing(),
                state.capacity(),
                ResistanceLadder.latest(health.ladder()),
                state.counts().charges(),
                health.leaks().stream().anyMatch(CellLeak::alarm));
    }

    private static PackHealth health(Evidence evidence, Bench bench) {
        return PackHealth.of(evidence.joined(), evidence.records(), bench.rules(), MeterAccuracy.USUAL);
    }

    private static PackReview review(Evidence evidence, PackHealth health, Bench bench) {
        List<Finding> events = EventFindings.of(
                evidence.records(), evidence.traces().stream().map(Stored::id).toList());
        Assessment assessment = PackAssessor.assess(
                        evidence.joined(),
                        health.present(evidence.noted().pack()),
                        bench.rules(),
                        MeterAccuracy.USUAL,
                        bench.now())
                .with(health.findings(), health.passed())
                .with(events, evidence.traces().isEmpty() || !events.isEmpty() ? List.of() : List.of(NO_EVENTS));
        return new PackReview(
                assessment,
                TaskPlanner.plan(assessment, bench.rules(), bench.chargers(), bench.sources(), bench.now()));
    }

    private Bench bench() {
        return new Bench(workshop.rules().set(), inUse(workshop.chargers()), inUse(workshop.sources()), ledger.now());
    }

    private static <T> List<T> inUse(Shelf<T> shelf) {
        return shelf.list().stream()
                .filter(item -> !item.retired())
                .map(Registered::item)
                .toList();
    }

    /**
     * What a pack's record holds.
     *
     * @param noted what was typed
     * @param traces what was logged
     */
    private record Evidence(PackHistory noted, List<Stored<TraceRecord>> traces) {
        List<TraceRecord> records() {
            return traces.stream().map(Stored::item).toList();
        }

        List<PastLimit> exceptions() {
            return traces.stream()
                    .flatMap(trace -> trace.item().events().stream()
                            .map(event -> new PastLimit(
                                    trace.id(),
                                    trace.item().startedAt() == null
                                            ? null
                                            : TraceUses.at(trace.item().startedAt(), event.atSeconds()),
                                    event,
                                    trace.item().acknowledged())))
                    .toList();
        }

        /** The noted record with the uses that only the traces tell of. */
        PackHistory joined() {
            return TraceUses.joined(noted, records());
        }
    }

    private Evidence evidence(Stored<Pack> pack) {
        return new Evidence(history(pack), ledger.book().items(Shapes.TRACE).ofPack(pack.id()));
    }

    private PackHistory history(Stored<Pack> pack) {
        return new PackHistory(
                pack.item(),
                oldestFirst(ledger.book().items(Shapes.CHECK).ofPack(pack.id()), Check::takenAt),
                oldestFirst(ledger.book().items(Shapes.CHARGE).ofPack(pack.id()), ChargeRecord::endedAt),
                oldestFirst(ledger.book().items(Shapes.RUN).ofPack(pack.id()), Run::endedAt));
    }

    /** By when it happened; what happened at once stays in the order it was entered. */
    private static <E> List<E> oldestFirst(List<Stored<E>> entries, Function<E, Instant> when) {
        return entries.stream()
                .map(Stored::item)
                .sorted(Comparator.comparing(when))
                .toList();
    }

    /** What every assessment of one review shares. */
    private record Bench(RuleSet rules, List<Charger> chargers, List<Source> sources, Instant now) {}
}
