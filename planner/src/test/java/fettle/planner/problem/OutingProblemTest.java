package fettle.planner.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.units.InputException;
import fettle.planner.TinyProblems;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutingProblemTest {
    private final OutingProblem sound = TinyProblems.of(1, 2);

    @Test
    void refusesASourceWithoutPower() {
        OutingProblem.Means means = sound.means();
        List<PowerSource> sources = List.of(
                PowerSource.endless("mains", Place.HOME, 0), means.sources().get(1));
        assertThatThrownBy(() ->
                        sound.with(new OutingProblem.Means(sources, means.chargers(), means.ports(), means.ways())))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("mains: power is 0 W; expected 1 or more. Leave out what gives nothing.");
    }

    @Test
    void joinsOverlappingPresenceAtOnePlace() {
        List<Presence> joined = Presence.merged(List.of(
                new Presence(Place.HOME, new Span(50, 90)),
                new Presence(Place.HOME, new Span(0, 60)),
                new Presence(Place.FIELD, new Span(90, 120))));
        assertThat(joined)
                .containsExactly(
                        new Presence(Place.HOME, new Span(0, 90)), new Presence(Place.FIELD, new Span(90, 120)));
    }

    @Test
    void refusesAPersonInTwoPlaces() {
        assertThatThrownBy(() -> sound.withPresence(List.of(
                        new Presence(Place.HOME, new Span(0, 100)), new Presence(Place.FIELD, new Span(90, 160)))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("minutes 90 to 100 are spent both at home and at the field");
    }

    @Test
    void refusesAPackTwiceInOneSet() {
        PackSet twice = new PackSet(List.of(new PackSet.Take("P0", 0.5), new PackSet.Take("P0", 0.5)));
        List<RunWanted> runs = new ArrayList<>(sound.runs());
        RunWanted run = runs.get(0);
        runs.set(0, new RunWanted(run.name(), run.craft(), run.value(), run.times(), List.of(twice)));
        assertThatThrownBy(() -> sound.withRuns(runs))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("one pack cannot be in two places");
    }

    @Test
    void namesEveryFaultAtOnce() {
        assertThatThrownBy(() -> sound.withLocks(List.of(
                        new Lock.RunAt("run 0", 7), new Lock.PackNot("P99"), new Lock.RunWith("run 0", List.of("P8")))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("run 0 at minute 7 is not on the plan's step; expected a multiple of 15 min")
                .hasMessageContaining("a lock names P99, which is not there")
                .hasMessageContaining("those packs do not fit it");
    }

    @Test
    void refusesAnEndBeforeItsStartAndSaysWhatToDoAtMidnight() {
        assertThatThrownBy(() -> new Span(1380, 60))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("Where it crosses midnight, give the next day.");
    }
}
