package fettle.workshop;

import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.engine.outing.Outing;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import fettle.engine.units.InputException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What has come of an outing's plan, and what comes next. */
final class Happenings {
    private final Outing outing;
    private final @Nullable KeptPlan plan;
    private final Instant now;

    Happenings(OutingState state, Instant now) {
        this.outing = state.outing();
        this.plan = state.plan();
        this.now = now;
    }

    /** The list with a planned run or charge begun now. */
    List<Happened> begun(String subject) {
        if (find(subject).isPresent()) {
            throw new InputException(
                    "what", named(subject) + " has begun already. Undo that in the journal if it has not.");
        }
        List<Happened> all = new ArrayList<>(outing.happened());
        all.add(planned(subject, now, null));
        return all;
    }

    /** The list with it ended now; one that was not noted as begun has begun unseen. */
    List<Happened> ended(String subject) {
        Optional<Happened> present = find(subject);
        if (present.map(Happened::ended).isPresent()) {
            throw new InputException(
                    "what", named(subject) + " has ended already. Undo that in the journal if it has not.");
        }
        return replaced(present.map(done -> done.endedAt(now)).orElseGet(() -> planned(subject, null, now)));
    }

    /** The list with what was put back. */
    List<Happened> putBack(String subject, double coulombs) {
        Happened done = find(subject)
                .filter(found -> found.kind() == Happened.Kind.RUN && found.ended() != null)
                .orElseThrow(() ->
                        new InputException("what", named(subject) + " is no run that has ended. Note its end first."));
        if (done.putBackCoulombs() != null) {
            throw new InputException("what", "what was put back after " + named(subject) + " is noted already.");
        }
        return replaced(done.putBack(coulombs));
    }

    /** Enters the run and the charge in the record of each of its packs. */
    void enter(String subject, double coulombs, Workshop workshop) {
        Happened done = find(subject).orElseThrow();
        Outing.NamedRun run = outing.runs().stream()
                .filter(one -> one.name().equalsIgnoreCase(subject))
                .findFirst()
                .orElseThrow(() -> new InputException("what", named(subject) + " is no run of this outing any more."));
        Instant ended = done.ended() == null ? now : done.ended();
        double seconds = done.began() == null
                ? run.wish().durationSeconds()
                : Math.max(6, Duration.between(done.began(), ended).toSeconds());
        for (String tag : done.packs()) {
            Pack pack = workshop.packs().find(tag).item();
            double left = Math.max(0, 1 - coulombs / pack.ratedCapacityCoulombs());
            workshop.entries()
                    .addRun(tag, new Run(ended, run.wish().craft(), seconds, left, null, null, outing.name()), "");
            workshop.entries().addCharge(tag, new ChargeRecord(now, coulombs, null, null, outing.name()), "");
        }
    }

    String named(String subject) {
        return find(subject).map(Happened::subject).orElse(subject.strip());
    }

    private Optional<Happened> find(String subject) {
        return outing.happened().stream()
                .filter(done -> done.subject().equalsIgnoreCase(subject.strip()))
                .findFirst();
    }

    private List<Happened> replaced(Happened changed) {
        List<Happened> all = new ArrayList<>(outing.happened());
        all.removeIf(done -> done.subject().equalsIgnoreCase(changed.subject()));
        all.add(changed);
        return all;
    }

    private Happened planned(String subject, @Nullable Instant began, @Nullable Instant ended) {
        List<PlannedRun> runs = plan == null ? List.of() : plan.runs();
        List<PlannedCharge> charges = plan == null ? List.of() : plan.charges();
        Optional<Happened> run = runs.stream()
                .filter(one -> one.run().equalsIgnoreCase(subject.strip()))
                .findFirst()
                .map(one -> new Happened(Happened.Kind.RUN, one.run(), one.packs(), began, ended, null));
        return run.or(() -> charges.stream()
                        .filter(one -> one.way().equalsIgnoreCase(subject.strip()))
                        .findFirst()
                        .map(one -> new Happened(Happened.Kind.CHARGE, one.way(), one.packs(), began, ended, null)))
                .orElseThrow(() -> new InputException(
                        "what",
                        "\"" + subject.strip() + "\" is neither a planned run nor a planned charge of " + outing.name()
                                + ". See: outing now."));
    }
}
