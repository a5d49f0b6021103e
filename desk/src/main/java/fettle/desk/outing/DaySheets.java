package fettle.desk.outing;

import fettle.desk.outing.DaySheet.Bar;
import fettle.desk.outing.DaySheet.Lane;
import fettle.desk.outing.DaySheet.Panel;
import fettle.desk.outing.DaySheet.Power;
import fettle.desk.outing.DaySheet.Shade;
import fettle.desk.outing.DaySheet.Tick;
import fettle.engine.outing.Attended;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.engine.outing.Outing;
import fettle.engine.outing.Spot;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** Draws day sheets. Used once for each outing. */
final class DaySheets {
    private static final double LEFT = 150;
    private static final double RIGHT = 24;
    private static final double HEAD = 24;
    private static final double LANE = 30;
    private static final double POWER = 58;
    private static final double PIXELS_PER_HOUR = 118;
    private static final double LEAST_WIDTH = 340;
    private static final double LETTER = 7.2;
    private static final Duration NIGHT = Duration.ofHours(2);
    private static final DateTimeFormatter TITLE = DateTimeFormatter.ofPattern("EEEE d MMMM, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final Outing outing;
    private final KeptPlan plan;
    private final Map<String, Double> limitWatts;

    /** @param limitWatts most power of every source by name [W] */
    DaySheets(Outing outing, KeptPlan plan, Map<String, Double> limitWatts) {
        this.outing = outing;
        this.plan = plan;
        this.limitWatts = Map.copyOf(limitWatts);
    }

    DaySheet sheet() {
        return new DaySheet(stretches().stream()
                .map(stretch -> new Drawing(stretch).panel())
                .toList());
    }

    private record Stretch(Instant from, Instant until) {
        boolean meets(Instant begin, Instant end) {
            return begin.isBefore(until) && from.isBefore(end);
        }
    }

    /** Times with something to do, those less than a night apart joined; a stretch in which nothing is planned is left out. */
    private List<Stretch> stretches() {
        List<Stretch> busy = Stream.concat(
                        plan.charges().stream().map(charge -> new Stretch(charge.begins(), charge.ends())),
                        plan.runs().stream().map(run -> new Stretch(run.begins(), run.coolUntil())))
                .sorted(Comparator.comparing(Stretch::from))
                .toList();
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : busy) {
            int last = joined.size() - 1;
            boolean apart = last < 0
                    || Duration.between(joined.get(last).until(), next.from()).compareTo(NIGHT) > 0;
            if (apart) {
                joined.add(next);
            } else if (next.until().isAfter(joined.get(last).until())) {
                joined.set(last, new Stretch(joined.get(last).from(), next.until()));
            }
        }
        return joined;
    }

    /** One stretch being drawn. */
    private final class Drawing {
        private final Instant from;
        private final Instant until;
        private final double width;
        private final List<PlannedCharge> charges;
        private final List<PlannedRun> runs;
        private final List<Lane> lanes = new ArrayList<>();
        private final List<Bar> bars = new ArrayList<>();
        private final List<Shade> shades = new ArrayList<>();
        private double top = HEAD;

        Drawing(Stretch stretch) {
            from = stretch.from().truncatedTo(ChronoUnit.HOURS);
            Instant end = stretch.until().truncatedTo(ChronoUnit.HOURS);
            until = end.isBefore(stretch.until()) ? end.plus(1, ChronoUnit.HOURS) : end;
            width = Math.max(LEAST_WIDTH, hours(from, until) * PIXELS_PER_HOUR);
            charges = plan.charges().stream()
                    .filter(charge -> stretch.meets(charge.begins(), charge.ends()))
                    .toList();
            runs = plan.runs().stream()
                    .filter(run -> stretch.meets(run.begins(), run.coolUntil()))
                    .toList();
        }

        Panel panel() {
            for (String port : names(charges, PlannedCharge::port)) {
                port(port);
            }
            for (String craft : names(runs, PlannedRun::craft)) {
                craft(craft);
            }
            List<Power> powers = new ArrayList<>();
            for (String source : names(charges, PlannedCharge::source)) {
                powers.add(power(source));
            }
            return new Panel(
                    title(), text(), LEFT + width + RIGHT, top + 6, LEFT, ticks(), lanes, shades, bars, powers);
        }

        private void port(String port) {
            lanes.add(new Lane(top, LANE, port));
            Spot spot = charges.stream()
                    .filter(charge -> charge.port().equals(port))
                    .findFirst()
                    .orElseThrow()
                    .spot();
            shade(spot);
            for (PlannedCharge charge : charges) {
                if (charge.port().equals(port)) {
                    String packs = String.join(" + ", charge.packs());
                    String how = TradeUnit.PERCENT.print(charge.fromFraction(), 0) + " to "
                            + TradeUnit.PERCENT.print(charge.toFraction(), 0);
                    String kind = charge.target().contains("storage") ? "to-storage" : "charge";
                    bars.add(bar(
                            kind,
                            charge.begins(),
                            charge.ends(),
                            List.of(packs + " " + charge.target(), packs),
                            packs + " " + charge.target() + ", " + how + ", " + clock(charge.begins()) + " to "
                                    + clock(charge.ends())));
                }
            }
            top += LANE;
        }

        private void shade(Spot spot) {
            Instant free = from;
            List<Attended> here = outing.attended().stream()
                    .filter(attended -> attended.spot() == spot)
                    .sorted(Comparator.comparing(Attended::from))
                    .toList();
            for (Attended attended : here) {
                shade(free, attended.from());
                free = attended.until().isAfter(free) ? attended.until() : free;
            }
            shade(free, until);
        }

        private void shade(Instant begin, Instant end) {
            Instant low = begin.isBefore(from) ? from : begin;
            Instant high = end.isAfter(until) ? until : end;
            if (low.isBefore(high)) {
                shades.add(new Shade(x(low), top, x(high) - x(low), LANE));
            }
        }

        private void craft(String craft) {
            lanes.add(new Lane(top, LANE, craft));
            for (PlannedRun run : runs) {
                if (run.craft().equals(craft)) {
                    String packs = String.join(" + ", run.packs());
                    bars.add(bar(
                            "cooling",
                            run.ends(),
                            run.coolUntil(),
                            List.of(),
                            packs + " cools until " + clock(run.coolUntil())));
                    Instant shown = run.coolUntil().isAfter(run.ends()) ? run.coolUntil() : run.ends();
                    Bar flown = bar(
                            "run",
                            run.begins(),
                            run.ends(),
                            List.of(),
                            run.run() + " with " + packs + ", " + clock(run.begins()) + " to " + clock(run.ends()));
                    double room = x(shown) - x(run.begins());
                    bars.add(new Bar(
                            flown.kind(),
                            flown.x(),
                            flown.top(),
                            flown.width(),
                            flown.height(),
                            fits(packs, room + LETTER) ? packs : "",
                            flown.title()));
                }
            }
            top += LANE;
        }

        private Bar bar(String kind, Instant begin, Instant end, List<String> labels, String title) {
            double left = x(begin);
            double long_ = Math.max(2, x(end) - left);
            String label = labels.stream()
                    .filter(text -> fits(text, long_))
                    .findFirst()
                    .orElse("");
            return new Bar(kind, left, top + 4, long_, LANE - 8, label, title);
        }

        private boolean fits(String label, double room) {
            return label.length() * LETTER + 6 <= room;
        }

        /** Steps of the power drawn: at every moment the most of each charge that goes on, which overstates the taper. */
        private Power power(String source) {
            List<PlannedCharge> fed = charges.stream()
                    .filter(charge -> charge.source().equals(source))
                    .toList();
            TreeSet<Instant> changes = new TreeSet<>(List.of(from, until));
            fed.forEach(charge -> {
                changes.add(charge.begins());
                changes.add(charge.ends());
            });
            double most =
                    changes.stream().mapToDouble(at -> watts(fed, at)).max().orElse(0);
            double limit = limitWatts.getOrDefault(source, most);
            double scale = (POWER - 18) / Math.max(1, Math.max(limit, most));
            double floor = top + POWER - 6;
            StringBuilder path = new StringBuilder("M" + round(LEFT) + " " + round(floor));
            for (Instant at : changes) {
                path.append(" H").append(round(x(at))).append(" V").append(round(floor - scale * watts(fed, at)));
            }
            path.append(" H")
                    .append(round(LEFT + width))
                    .append(" V")
                    .append(round(floor))
                    .append(" Z");
            Power drawn = new Power(
                    source + ", W",
                    top,
                    POWER,
                    path.toString(),
                    floor - scale * limit,
                    "at most " + Math.round(most) + " of " + TradeUnit.WATT.print(limit, 0));
            top += POWER;
            return drawn;
        }

        private double watts(List<PlannedCharge> fed, Instant at) {
            return fed.stream()
                    .filter(charge -> !at.isBefore(charge.begins()) && at.isBefore(charge.ends()))
                    .mapToDouble(PlannedCharge::sourceWatts)
                    .sum();
        }

        private List<Tick> ticks() {
            List<Tick> ticks = new ArrayList<>();
            for (Instant at = from; !at.isAfter(until); at = at.plus(1, ChronoUnit.HOURS)) {
                ticks.add(new Tick(x(at), clock(at)));
            }
            return ticks;
        }

        private double x(Instant at) {
            return LEFT + width * hours(from, at) / hours(from, until);
        }

        private String title() {
            return TITLE.format(local(from)) + " to " + clock(until);
        }

        private String text() {
            List<String> parts = new ArrayList<>();
            bars.stream()
                    .filter(bar -> !bar.kind().equals("cooling"))
                    .map(Bar::title)
                    .forEach(parts::add);
            return title() + ": " + String.join("; ", parts) + ".";
        }
    }

    private static <T> List<String> names(List<T> items, Function<T, String> name) {
        return items.stream().map(name).distinct().sorted().toList();
    }

    private ZonedDateTime local(Instant at) {
        return at.atZone(outing.zoneId());
    }

    private String clock(Instant at) {
        return CLOCK.format(local(at));
    }

    private static double hours(Instant from, Instant until) {
        return TradeUnit.HOUR.fromSi(Duration.between(from, until).toSeconds());
    }

    private static String round(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }
}
