package fettle.engine.outing;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Finds everything about a day that cannot be, and says the smallest change that would make it possible. */
final class OutingFaults {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final Duration LONGEST = Duration.ofDays(7);
    private static final int MOST_RUNS = 200;

    private final Faults faults = new Faults();
    private final ZoneId zone;

    private final LocalDate day;

    private OutingFaults(ZoneId zone, Instant arrive) {
        this.zone = zone;
        this.day = arrive.atZone(zone).toLocalDate();
    }

    static void refuse(
            String name,
            String zone,
            OutingTimes times,
            double ambientKelvins,
            List<Attended> attended,
            List<Feed> feeds,
            List<String> packs,
            List<RunWish> wishes,
            Instant storageBy,
            List<Choice> choices) {
        boolean known = Outing.isZone(zone);
        OutingFaults found = new OutingFaults(known ? ZoneId.of(zone) : ZoneOffset.UTC, times.arrive());
        if (name.isBlank()) {
            found.faults.add("name", "the outing has no name. Give it one, e.g. Saturday at the lake.");
        }
        if (!known) {
            found.faults.add("zone", "time zone is \"" + zone + "\"; expected a name like Europe/Zurich or +02:00.");
        }
        found.faults.range(
                "ambient", "temperature at the field", ambientKelvins, TradeUnit.CELSIUS, -40, 60, "Give it in °C.");
        found.checkTimes(times, storageBy);
        found.checkAttended(attended, times);
        found.checkFeeds(feeds);
        found.checkNamedOnce(packs);
        wishes.forEach(wish -> found.checkWish(wish, times));
        if (wishes.stream().mapToLong(RunWish::count).sum() > MOST_RUNS) {
            found.faults.add("runs", "more than " + MOST_RUNS + " runs are wanted. Plan the days one by one.");
        }
        new ChoiceFaults(found.faults, choices, wishes).check();
        found.faults.refuse();
    }

    private void checkTimes(OutingTimes times, Instant storageBy) {
        inOrder("arrive", "the field is reached", times.arrive(), "home is left", times.leaveHome());
        inOrder("packUp", "packing up", times.packUp(), "the field is reached", times.arrive());
        inOrder("backHome", "home is reached", times.backHome(), "packing up", times.packUp());
        if (storageBy.isBefore(times.arrive())) {
            faults.add(
                    "storageBy",
                    "every pack is wanted at storage by " + shown(storageBy) + ", before the field is reached at "
                            + shown(times.arrive()) + ". Give a time after the outing.");
        }
        if (Duration.between(times.leaveHome(), storageBy).compareTo(LONGEST) > 0) {
            faults.add("storageBy", "the outing lasts longer than a week. Plan a week at most.");
        }
    }

    private void inOrder(String field, String later, Instant at, String earlier, Instant before) {
        if (!at.isAfter(before)) {
            faults.add(
                    field,
                    later + " at " + shown(at) + " is not after " + earlier + " at " + shown(before)
                            + ". Where it crosses midnight, write day after before the time.");
        }
    }

    private void checkAttended(List<Attended> attended, OutingTimes times) {
        if (attended.isEmpty()) {
            faults.add(
                    "attended",
                    "nobody is with the chargers at any time, so nothing can be charged. Say when somebody is, e.g."
                            + " field 09:00 to 16:00.");
        }
        for (int at = 0; at < attended.size(); at++) {
            Attended one = attended.get(at);
            if (!one.until().isAfter(one.from())) {
                faults.add(
                        "attended",
                        one.spot().label() + " from " + shown(one.from()) + " ends at " + shown(one.until())
                                + ", not after its start. Where it crosses midnight, write day after before the time.");
                continue;
            }
            checkWhereabouts(one, times);
            for (Attended other : attended.subList(0, at)) {
                if (one.spot() != other.spot() && one.meets(other)) {
                    faults.add("attended", clash(one, other));
                }
            }
        }
    }

    private void checkWhereabouts(Attended one, OutingTimes times) {
        boolean field = one.spot() == Spot.FIELD;
        if (field && (one.from().isBefore(times.arrive()) || one.until().isAfter(times.packUp()))) {
            faults.add(
                    "attended",
                    "field from " + shown(one.from()) + " to " + shown(one.until())
                            + " is not within arriving at " + shown(times.arrive()) + " and packing up at "
                            + shown(times.packUp()) + ". Arrive earlier, pack up later, or shorten it.");
        }
        if (!field && one.from().isBefore(times.backHome()) && one.until().isAfter(times.leaveHome())) {
            faults.add(
                    "attended",
                    "home from " + shown(one.from()) + " to " + shown(one.until()) + " is while out: home is left at "
                            + shown(times.leaveHome()) + " and reached again at " + shown(times.backHome())
                            + ". End it by leaving, or begin it once back.");
        }
    }

    private String clash(Attended one, Attended other) {
        Instant from = one.from().isAfter(other.from()) ? one.from() : other.from();
        Instant until = one.until().isBefore(other.until()) ? one.until() : other.until();
        return shown(from) + " to " + shown(until)
                + " is spent both at home and at the field; expected one place at a time. End one before the other begins.";
    }

    private void checkFeeds(List<Feed> feeds) {
        Set<String> seen = new HashSet<>();
        for (Feed feed : feeds) {
            faults.range(
                    "feeds",
                    feed.charger() + ": efficiency",
                    feed.efficiencyFraction(),
                    TradeUnit.PERCENT,
                    30,
                    100,
                    "See its maker's sheet.");
            if (feed.from() != null && feed.until() != null && !feed.until().isAfter(feed.from())) {
                faults.add(
                        "feeds",
                        feed.source() + " gives power until " + shown(feed.until()) + ", not after "
                                + shown(feed.from()) + ". Where it crosses midnight, write day after before the time.");
            }
            if (!seen.add(feed.spot() + feed.charger().toLowerCase(Locale.ROOT))) {
                faults.add(
                        "feeds",
                        feed.charger() + " is fed twice at the same place; expected one source. Remove one line.");
            }
        }
    }

    private void checkNamedOnce(List<String> packs) {
        Set<String> seen = new HashSet<>();
        for (String pack : packs) {
            if (!seen.add(pack.toLowerCase(Locale.ROOT))) {
                faults.add("packs", pack + " is named twice. Name each pack once.");
            }
        }
    }

    private void checkWish(RunWish wish, OutingTimes times) {
        faults.range(
                "runs",
                wish.craft() + ": run time",
                wish.durationSeconds(),
                TradeUnit.MINUTE,
                0.1,
                1_440,
                "Give minutes.");
        faults.range("runs", wish.craft() + ": gap", wish.gapSeconds(), TradeUnit.MINUTE, 0, 1_440, "Give minutes.");
        faults.range(
                "runs",
                wish.craft() + ": share taken",
                wish.takesFraction(),
                TradeUnit.PERCENT,
                1,
                100,
                "Give per cent.");
        if (wish.count() < 1 || wish.value() < 1 || wish.value() > 1000) {
            faults.add(
                    "runs",
                    wish.craft() + " is wanted " + wish.count() + " times at a value of " + wish.value()
                            + "; expected 1 or more of both, and a value of 1000 at most. Leave out what is not wanted.");
        }
        if (wish.latest().isBefore(wish.earliest())) {
            faults.add(
                    "runs",
                    wish.craft() + " may start from " + shown(wish.earliest()) + " to " + shown(wish.latest())
                            + "; expected the latest not before the earliest. Where it crosses midnight, write day after"
                            + " before the time.");
            return;
        }
        Instant first = wish.earliest().isAfter(times.arrive()) ? wish.earliest() : times.arrive();
        Duration takes = Duration.ofSeconds((long) Math.ceil(wish.durationSeconds()));
        Instant lastEnd = first.plus(takes);
        if (first.isAfter(wish.latest())) {
            faults.add(
                    "runs",
                    wish.craft() + " must start by " + shown(wish.latest()) + ", but the field is reached at "
                            + shown(times.arrive()) + ". Arrive "
                            + minutes(Duration.between(wish.latest(), times.arrive()))
                            + " earlier, or let it start that much later.");
        } else if (lastEnd.isAfter(times.packUp())) {
            faults.add(
                    "runs",
                    wish.craft() + " cannot end before packing up at " + shown(times.packUp())
                            + " if it starts at " + shown(first) + " at the earliest. Pack up "
                            + minutes(Duration.between(times.packUp(), lastEnd))
                            + " later, or start that much earlier.");
        }
    }

    private static String minutes(Duration span) {
        return (span.toSeconds() + 59) / 60 + " min";
    }

    /** The time of day; with the day where it is not that of the outing. */
    private String shown(Instant at) {
        ZonedDateTime local = at.atZone(zone);
        return (local.toLocalDate().equals(day) ? CLOCK : SHOWN).format(local);
    }
}
