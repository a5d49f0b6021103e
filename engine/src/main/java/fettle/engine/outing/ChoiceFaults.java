package fettle.engine.outing;

import fettle.engine.units.Faults;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds settled choices that contradict each other: a run settled twice, a pack in two craft at once. */
final class ChoiceFaults {
    private final Faults faults;
    private final List<Choice> choices;
    private final Map<String, Double> secondsByRun = new HashMap<>();

    ChoiceFaults(Faults faults, List<Choice> choices, List<RunWish> wishes) {
        this.faults = faults;
        this.choices = choices;
        Map<String, Integer> numbered = new HashMap<>();
        for (RunWish wish : wishes) {
            int before = numbered.merge(wish.craft(), wish.count(), Integer::sum) - wish.count();
            wish.names(before).forEach(run -> secondsByRun.put(run, wish.durationSeconds()));
        }
    }

    void check() {
        for (int at = 0; at < choices.size(); at++) {
            Choice one = choices.get(at);
            for (Choice other : choices.subList(0, at)) {
                if (one.sameMatter(other)) {
                    faults.add(
                            "choices",
                            one.subject() + ": the " + one.kind().label() + " is settled twice. Keep one of them.");
                } else if (one.kind() == Choice.Kind.RUN_PACKS && other.kind() == Choice.Kind.RUN_PACKS) {
                    checkApart(one, other);
                }
            }
        }
    }

    private void checkApart(Choice one, Choice other) {
        Instant start = start(one.subject());
        Instant otherStart = start(other.subject());
        boolean atOnce =
                start.isBefore(end(other.subject(), otherStart)) && otherStart.isBefore(end(one.subject(), start));
        if (start == Instant.MAX || otherStart == Instant.MAX || !atOnce) {
            return;
        }
        one.packs().stream()
                .filter(other.packs()::contains)
                .forEach(pack -> faults.add(
                        "choices",
                        pack + " cannot be in " + one.subject() + " and " + other.subject()
                                + " at once. Settle another pack or another time for one of them."));
    }

    /** When a run is settled to start; {@link Instant#MAX} if it is not. */
    private Instant start(String run) {
        return choices.stream()
                .filter(choice -> choice.kind() == Choice.Kind.RUN_START
                        && choice.subject().equalsIgnoreCase(run))
                .map(Choice::at)
                .findFirst()
                .orElse(Instant.MAX);
    }

    private Instant end(String run, Instant start) {
        return start == Instant.MAX
                ? start
                : start.plusSeconds(secondsByRun.getOrDefault(run, 0.0).longValue());
    }
}
