package fettle.cli;

import fettle.engine.charge.Task;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Finding;
import fettle.engine.units.Counted;
import fettle.engine.units.TradeUnit;
import fettle.workshop.PackReview;
import fettle.workshop.ShelfReview;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The morning review as text that fits {@link Wrapped#COLUMNS} columns. */
final class ReviewTable {
    private static final DateTimeFormatter MORNING =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DUE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    /** A task due this close to now is printed as due now: dates show no seconds. */
    private static final Duration STILL_NOW = Duration.ofMinutes(1);

    private ReviewTable() {}

    static String of(ShelfReview review, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        lines.add(MORNING.withZone(zone).format(review.now()) + " · packs "
                + review.packs().size() + " · tasks " + review.tasks().size());
        if (review.packs().isEmpty()) {
            lines.add("No packs yet. Add one: fettle pack add P01 --chemistry LiPo --cells 4S --capacity 5000");
        }
        Map<String, String> cautioned = new HashMap<>();
        for (PackReview pack : review.packs()) {
            lines.add("");
            lines.addAll(linesOf(pack, review.now(), zone, cautioned));
        }
        return String.join(System.lineSeparator(), lines);
    }

    /** One pack's tag, standing and charge, on one line. */
    static List<String> heading(Assessment state) {
        String charge = state.charge() == null ? "charge unknown" : TradeUnit.PERCENT.print(state.charge(), 0);
        return List.of(String.format(
                "%-8s %s %-9s %-15s %s",
                state.pack().tag(),
                state.standing().glyph(),
                state.standing().word(),
                charge,
                PackWords.label(state.pack())));
    }

    /** The most serious finding; of a pack without one, how many checks it passed. */
    private static String reason(Assessment state) {
        return state.findings().stream()
                .findFirst()
                .map(Finding::statement)
                .orElseGet(() -> "passed " + Counted.of(state.passed().size(), "check") + ", none found against it");
    }

    /** What to do and by when, with the caution that belongs to it. */
    static String instruction(Task task, Instant now, ZoneId zone) {
        return task.instruction() + due(task, now, zone) + caution(task.caution());
    }

    private static String due(Task task, Instant now, ZoneId zone) {
        if (task.due() == null) {
            return "";
        }
        String when = DUE.withZone(zone).format(task.due());
        Duration left = Duration.between(now, task.due());
        if (left.abs().compareTo(STILL_NOW) < 0) {
            return " (now)";
        }
        return left.isNegative() ? " (overdue since " + when + ")" : " (by " + when + ")";
    }

    private static String caution(String caution) {
        return caution.isEmpty() ? "" : " Caution: " + caution;
    }

    // a caution is told in full at its first action; the same words ten times over would not be read
    private static List<String> linesOf(PackReview review, Instant now, ZoneId zone, Map<String, String> cautioned) {
        List<String> lines = new ArrayList<>(heading(review.assessment()));
        lines.addAll(Wrapped.lines("why", reason(review.assessment())));
        review.tasks().stream().findFirst().ifPresent(task -> {
            String tag = task.packTag();
            String told = cautioned.putIfAbsent(task.caution(), tag);
            String caution = told == null || task.caution().isEmpty()
                    ? caution(task.caution())
                    : caution("as for " + told + ", above.");
            lines.addAll(Wrapped.lines("do", task.instruction() + due(task, now, zone) + caution));
        });
        return lines;
    }
}
