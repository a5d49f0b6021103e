package fettle.workshop.demo;

import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import fettle.engine.units.InputException;
import fettle.workshop.TraceChoices;
import fettle.workshop.TraceProgress;
import fettle.workshop.Workshop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/** Enters the invented club's record into a new book, through the same use cases a person uses. */
public final class DemoBook {
    private static final String ACTOR = "club";
    private static final Duration ENTERED_AFTER = Duration.ofMinutes(2);

    private static final Duration BEFORE_FLOATS = Duration.ofDays(62);
    private static final Duration AFTER_FLOATS = Duration.ofDays(9);

    /** Pulses beyond which the left aileron binds, before and after its rod was bent [µs]. */
    private static final double FREE = 1915;

    private static final double FOULED = 1868;

    private static final Duration LOG_TAKEN_AFTER = Duration.ofHours(3);
    private static final long REST_BEFORE_SECONDS = 120;
    private static final double HOLDS_SHARE = 1;
    private static final double WEAK_CELL_CHARGE = 0.82;

    private DemoBook() {}

    /**
     * Makes the book.
     *
     * @param folder where; must not hold a book with packs
     * @param now when the record ends
     * @param progress told what is going on, a line at a time
     * @throws InputException if there is already a book with packs
     */
    public static void make(Path folder, Instant now, Consumer<String> progress) {
        List<PackStory> stories = DemoScenario.stories(now);
        ScenarioClock clock = new ScenarioClock(stories.get(0).registered());
        try (Workshop workshop = Workshop.open(folder, clock, ACTOR)) {
            if (!workshop.packs().list().isEmpty()) {
                throw new InputException(
                        "book",
                        "there is already a book with packs in " + folder + ". Name an empty folder for the demo.");
            }
            DemoKit.sources().forEach(workshop.sources()::add);
            DemoKit.chargers().forEach(workshop.chargers()::add);
            DemoKit.craft().forEach(workshop.craft()::add);
            DemoControls.servos().forEach(workshop.servos()::add);
            List<Entry> entries = entries(workshop, stories);
            entries.addAll(controls(workshop, now));
            entries.addAll(logs(workshop, stories));
            entries.sort(Comparator.comparing(Entry::at)); // stable: a pack is registered before its first check
            progress.accept("entering " + stories.size() + " packs and eight months of checks, charges and runs …");
            for (Entry entry : entries) {
                clock.set(entry.at());
                entry.make().run();
            }
            clock.set(now);
            progress.accept("planning the club's next day out …");
            DemoOuting.make(workshop, now);
        }
    }

    private static List<Entry> entries(Workshop workshop, List<PackStory> stories) {
        List<Entry> entries = new ArrayList<>();
        for (PackStory story : stories) {
            String tag = story.pack().tag();
            entries.add(new Entry(story.registered(), () -> workshop.packs().add(story.pack())));
            var history = story.history();
            history.checks()
                    .forEach(check -> entries.add(new Entry(
                            check.takenAt().plus(ENTERED_AFTER),
                            () -> workshop.entries().addCheck(tag, check, PackStory.typed(tag, check)))));
            history.charges()
                    .forEach(charge -> entries.add(new Entry(
                            charge.endedAt().plus(ENTERED_AFTER),
                            () -> workshop.entries().addCharge(tag, charge, ""))));
            history.runs()
                    .forEach(run -> entries.add(new Entry(
                            run.endedAt().plus(ENTERED_AFTER),
                            () -> workshop.entries().addRun(tag, run, ""))));
        }
        return entries;
    }

    /** The trainer's set-up before and after the floats, with a sweep each time. */
    private static List<Entry> controls(Workshop workshop, Instant now) {
        Instant before = now.minus(BEFORE_FLOATS);
        Instant after = now.minus(AFTER_FLOATS);
        return List.of(
                new Entry(before, () -> sweep(workshop, FREE)),
                new Entry(before, () -> workshop.setUps().add(DemoControls.CRAFT, DemoControls.BEFORE, null, "")),
                new Entry(after, () -> sweep(workshop, FOULED)),
                new Entry(
                        after,
                        () -> workshop.setUps()
                                .add(DemoControls.CRAFT, DemoControls.AFTER, null, "floats on, aileron rod re-bent")));
    }

    private static void sweep(Workshop workshop, double bindsBeyond) {
        workshop.setUps().keep(DemoControls.CRAFT, "left aileron", "left-aileron.csv", DemoControls.sweep(bindsBeyond));
    }

    /** Flights of two packs that had a logger on board; in the last, the drifting cell sags. */
    private static List<Entry> logs(Workshop workshop, List<PackStory> stories) {
        List<Entry> entries = new ArrayList<>();
        for (PackStory story : stories) {
            String tag = story.pack().tag();
            List<Run> runs = story.history().runs();
            if (tag.equals("P01")) {
                entries.add(
                        flown(workshop, story.pack(), runs.get(0), new double[] {2.4e-3, 2.5e-3, 2.4e-3, 2.5e-3}, 1));
                entries.add(flown(
                        workshop,
                        story.pack(),
                        runs.get(runs.size() - 1),
                        new double[] {2.6e-3, 2.8e-3, 2.7e-3, 2.7e-3},
                        1));
            } else if (tag.equals("P02")) {
                entries.add(flown(
                        workshop,
                        story.pack(),
                        runs.get(runs.size() - 1),
                        new double[] {2.8e-3, 2.7e-3, 4.9e-3, 2.8e-3},
                        WEAK_CELL_CHARGE));
                Instant nextDay = runs.get(runs.size() - 1).endedAt().plus(Duration.ofHours(20));
                entries.add(new Entry(nextDay, () -> lookInto(workshop, tag)));
            }
        }
        return entries;
    }

    private static void lookInto(Workshop workshop, String tag) {
        long trace = workshop.traces().ofPack(tag).get(0).id();
        workshop.traces().acknowledge(trace, "no swelling; cell 3 was 17 mV low after a night's rest, balanced");
    }

    /** @param thirdCharge charge of cell 3 at the start, the others being full */
    private static Entry flown(Workshop workshop, Pack pack, Run run, double[] cellOhms, double thirdCharge) {
        Instant begun = run.endedAt().minusSeconds(Math.round(run.durationSeconds()) + REST_BEFORE_SECONDS);
        DemoLogs.Flight flight = new DemoLogs.Flight(
                pack,
                begun,
                run.durationSeconds(),
                cellOhms,
                new double[] {0.985, 0.985, 0.985 * thirdCharge, 0.985},
                HOLDS_SHARE);
        return new Entry(run.endedAt().plus(LOG_TAKEN_AFTER), () -> take(workshop, flight));
    }

    private static void take(Workshop workshop, DemoLogs.Flight flight) {
        try {
            Path folder = Files.createTempDirectory("fettle-demo");
            String day = flight.begun().toString().substring(0, 10);
            Path file = Files.writeString(
                    folder.resolve("harrier-" + day + "-" + flight.pack().tag() + ".csv"), DemoLogs.text(flight));
            workshop.traces().add(flight.pack().tag(), file, TraceChoices.NONE, TraceProgress.NONE);
            Files.delete(file);
            Files.delete(folder);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private record Entry(Instant at, Runnable make) {}
}
