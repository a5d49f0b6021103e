package fettle.cli;

import fettle.engine.charge.Task;
import fettle.engine.pack.Assessment;
import fettle.engine.units.TradeUnit;
import fettle.workshop.PackReview;
import fettle.workshop.ShelfReview;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The morning review as text that fits {@link Wrapped#COLUMNS} columns. */
final class ReviewTable {
    private static final DateTimeFormatter MORNING =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DUE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private ReviewTable() {}

    static String of(ShelfReview review, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        lines.add(MORNING.withZone(zone).format(review.now()) + " · packs "
                + review.packs().size() + " · tasks " + review.tasks().size());
        if (review.packs().isEmpty()) {
            lines.add("No packs yet. Add one: fettle pack add P01 --chemistry LiPo --cells 4S --capacity 5000");
        }
        for (PackReview pack : review.packs()) {
            lines.add("");
            lines.addAll(linesOf(pack, zone));
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

    /** What to do and by when, with the caution that belongs to it. */
    static String instruction(Task task, ZoneId zone) {
        String due = task.due() == null ? "" : " (by " + DUE.withZone(zone).format(task.due()) + ")";
        String caution = task.caution().isEmpty() ? "" : " Caution: " + task.caution();
        return task.instruction() + due + caution;
    }

    private static List<String> linesOf(PackReview review, ZoneId zone) {
        List<String> lines = new ArrayList<>(heading(review.assessment()));
        review.assessment().findings().stream()
                .findFirst()
                .ifPresent(finding -> lines.addAll(Wrapped.lines("why", finding.statement())));
        review.tasks().stream()
                .findFirst()
                .ifPresent(task -> lines.addAll(Wrapped.lines("do", instruction(task, zone))));
        return lines;
    }
}
