package fettle.workshop;

import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Limits;
import fettle.engine.units.Estimate;
import fettle.workshop.outing.DayKit;
import fettle.workshop.outing.PackAtHand;
import fettle.workshop.outing.PackFit;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks at the kit an outing is planned with, as it is now: every pack's state, and what the day has done to it so far. */
final class DayKits {
    private static final Duration COOLING = Duration.ofMinutes(20);

    private final Workshop workshop;

    DayKits(Workshop workshop) {
        this.workshop = workshop;
    }

    DayKit of(OutingState state) {
        DayKit bare =
                new DayKit(List.of(), inUse(workshop.craft()), inUse(workshop.chargers()), inUse(workshop.sources()));
        List<PackAtHand> packs = state.outing().packs().stream()
                .map(tag -> hand(tag, state, bare))
                .toList();
        return new DayKit(packs, bare.craft(), bare.chargers(), bare.sources());
    }

    private PackAtHand hand(String tag, OutingState state, DayKit kit) {
        KnownPack known = workshop.review().known(tag);
        Assessment assessment = known.assessment();
        Pack pack = assessment.pack();
        Limits limits = workshop.rules().limits(pack);
        double coulombs = assessment.capacity().plannedCoulombs();
        PackAtHand hand = new PackAtHand(
                assessment,
                limits,
                coulombs,
                CellOhms.of(known.history()),
                lowEnd(assessment.charge()),
                null,
                leftOut(assessment));
        return hand.usable() ? after(hand, state, kit) : hand;
    }

    private static double lowEnd(@Nullable Estimate charge) {
        return charge == null ? 0 : Math.max(0, Math.min(1, charge.value() - charge.standardDeviation()));
    }

    private static String leftOut(Assessment assessment) {
        if (assessment.standing().compareTo(Standing.UNPROVEN) >= 0) {
            String why = assessment.findings().isEmpty()
                    ? ""
                    : ": " + assessment.findings().get(0).statement();
            return assessment.standing().word() + why;
        }
        return assessment.charge() == null ? "its charge is not known; check it" : "";
    }

    /** The pack after what was done with it since it was last looked at. */
    private static PackAtHand after(PackAtHand hand, OutingState state, DayKit kit) {
        PackAtHand now = hand;
        for (Happened done : inOrder(state.outing(), hand)) {
            now = done.kind() == Happened.Kind.RUN ? run(now, done, state.outing(), kit) : charged(now, done, state);
        }
        return now;
    }

    private static List<Happened> inOrder(Outing outing, PackAtHand hand) {
        Instant looked = hand.assessment().latestCheckAt();
        return outing.happened().stream()
                .filter(done -> done.packs().contains(hand.tag()) && done.putBackCoulombs() == null)
                .filter(done -> looked == null || !at(done).isBefore(looked))
                .sorted(Comparator.comparing(DayKits::at))
                .toList();
    }

    private static Instant at(Happened done) {
        Instant ended = done.ended();
        return ended != null ? ended : Optional.ofNullable(done.began()).orElse(Instant.EPOCH);
    }

    private static PackAtHand run(PackAtHand hand, Happened done, Outing outing, DayKit kit) {
        return outing.runs().stream()
                .filter(run -> done.isOf(Happened.Kind.RUN, run.name()))
                .findFirst()
                .flatMap(run -> kit.craft().stream()
                        .filter(craft -> craft.name().equals(run.wish().craft()))
                        .findFirst()
                        .map(craft -> {
                            double left = hand.chargeFraction() - PackFit.takes(run.wish(), craft, hand);
                            Instant ends = done.ended() != null
                                    ? done.ended()
                                    : at(done).plusSeconds((long) run.wish().durationSeconds());
                            return with(hand, Math.max(0, left), ends.plus(COOLING));
                        }))
                .orElse(hand);
    }

    private static PackAtHand charged(PackAtHand hand, Happened done, OutingState state) {
        KeptPlan plan = state.plan();
        if (plan == null || done.ended() == null) {
            return hand;
        }
        return plan.charges().stream()
                .filter(charge -> done.isOf(Happened.Kind.CHARGE, charge.way()))
                .findFirst()
                .map(charge -> with(hand, charge.toFraction(), hand.freeAt()))
                .orElse(hand);
    }

    private static PackAtHand with(PackAtHand hand, double charge, @Nullable Instant freeAt) {
        return new PackAtHand(
                hand.assessment(), hand.limits(), hand.capacityCoulombs(), hand.stepOhms(), charge, freeAt, "");
    }

    private static <T> List<T> inUse(Shelf<T> shelf) {
        return shelf.list().stream()
                .filter(item -> !item.retired())
                .map(Registered::item)
                .toList();
    }
}
