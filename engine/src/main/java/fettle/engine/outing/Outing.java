package fettle.engine.outing;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A planned day.
 *
 * @param name its name
 * @param zone id of the time zone its times are written in, e.g. {@code Europe/Zurich}
 * @param times the corners of the day
 * @param ambientKelvins temperature at the field [K]
 * @param attended when a person is where; nothing is charged outside these times
 * @param feeds chargers and what feeds them, by place
 * @param packs tags of the packs that may be used
 * @param wishes runs wanted
 * @param goals keys of the goals, most important first; empty for the usual order
 * @param storageBy when every pack should be at storage again
 * @param choices what is settled already
 * @param happened what came of it so far
 * @param note free text
 */
public record Outing(
        String name,
        String zone,
        OutingTimes times,
        double ambientKelvins,
        List<Attended> attended,
        List<Feed> feeds,
        List<String> packs,
        List<RunWish> wishes,
        List<String> goals,
        Instant storageBy,
        List<Choice> choices,
        List<Happened> happened,
        String note) {
    public Outing {
        attended = List.copyOf(attended);
        feeds = List.copyOf(feeds);
        packs = List.copyOf(packs);
        wishes = List.copyOf(wishes);
        goals = List.copyOf(goals);
        choices = List.copyOf(choices);
        happened = List.copyOf(happened);
        OutingFaults.refuse(name, zone, times, ambientKelvins, attended, feeds, packs, wishes, storageBy, choices);
    }

    /** The time zone. */
    public ZoneId zoneId() {
        return ZoneId.of(zone);
    }

    /** The day it is about: that of arriving at the field. */
    public LocalDate date() {
        return times.arrive().atZone(zoneId()).toLocalDate();
    }

    /** Every single run wanted by name, in the order of the wishes. */
    public List<NamedRun> runs() {
        Map<String, Integer> numbered = new HashMap<>();
        List<NamedRun> runs = new ArrayList<>();
        for (RunWish wish : wishes) {
            int before = numbered.getOrDefault(wish.craft(), 0);
            wish.names(before).forEach(run -> runs.add(new NamedRun(run, wish)));
            numbered.put(wish.craft(), before + wish.count());
        }
        return runs;
    }

    /**
     * One run wanted.
     *
     * @param name its name, e.g. {@code Harrier 2}
     * @param wish what it must be like
     */
    public record NamedRun(String name, RunWish wish) {}

    /** When the first attended time begins. */
    public Instant begins() {
        return attended.stream().map(Attended::from).min(Instant::compareTo).orElse(times.leaveHome());
    }

    /** When nothing more can be done: the last attended time and the time for storage are over. */
    public Instant ends() {
        Instant last =
                attended.stream().map(Attended::until).max(Instant::compareTo).orElse(times.backHome());
        return storageBy.isAfter(last) ? storageBy : last;
    }

    public Outing withChoices(List<Choice> others) {
        return new Outing(
                name,
                zone,
                times,
                ambientKelvins,
                attended,
                feeds,
                packs,
                wishes,
                goals,
                storageBy,
                others,
                happened,
                note);
    }

    public Outing withHappened(List<Happened> others) {
        return new Outing(
                name,
                zone,
                times,
                ambientKelvins,
                attended,
                feeds,
                packs,
                wishes,
                goals,
                storageBy,
                choices,
                others,
                note);
    }

    /** Whether a text names a time zone. */
    static boolean isZone(String zone) {
        try {
            ZoneId.of(zone);
            return true;
        } catch (DateTimeException unknown) {
            return false;
        }
    }
}
