package fettle.desk.today;

import fettle.desk.frame.Figures;
import fettle.desk.frame.TaskLine;
import fettle.desk.spread.SpreadStrip;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Rule;
import fettle.engine.units.TradeUnit;
import fettle.workshop.PackReview;
import fettle.workshop.ShelfReview;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * What needs doing, and every pack.
 *
 * @param tasks those with a due time, soonest first
 * @param whenWanted those for when the pack is next wanted
 * @param counts how many packs have each standing, e.g. {@code 3 ready}
 * @param packs worst standing first
 */
public record TodayPage(List<TaskLine> tasks, List<TaskLine> whenWanted, List<Count> counts, List<Row> packs) {

    /** How many packs have one standing. */
    public record Count(Standing standing, long packs) {}

    /** One pack in the table. */
    public record Row(
            String tag,
            String label,
            Standing standing,
            String charge,
            SpreadStrip strip,
            String checked,
            String reason) {}

    static TodayPage of(ShelfReview review, Function<Pack, List<Rule>> rules, Figures figures) {
        List<Row> rows =
                review.packs().stream().map(pack -> row(pack, rules, figures)).toList();
        return new TodayPage(lines(review, true, figures), lines(review, false, figures), counts(rows), rows);
    }

    private static List<TaskLine> lines(ShelfReview review, boolean dated, Figures figures) {
        return review.tasks().stream()
                .filter(task -> (task.due() != null) == dated)
                .map(task -> TaskLine.of(task, figures))
                .toList();
    }

    private static List<Count> counts(List<Row> rows) {
        return Arrays.stream(Standing.values())
                .map(standing -> new Count(
                        standing,
                        rows.stream().filter(row -> row.standing() == standing).count()))
                .filter(count -> count.packs() > 0)
                .toList();
    }

    private static Row row(PackReview review, Function<Pack, List<Rule>> rules, Figures figures) {
        Assessment found = review.assessment();
        return new Row(
                found.pack().tag(),
                label(found),
                found.standing(),
                Figures.estimate(found.charge(), TradeUnit.PERCENT, 0),
                SpreadStrip.slim(found, rules.apply(found.pack())),
                figures.ago(found.latestCheckAt()),
                reason(found));
    }

    private static String reason(Assessment found) {
        return found.findings().isEmpty()
                ? "passed " + found.passed().size() + " checks"
                : found.findings().get(0).statement();
    }

    private static String label(Assessment found) {
        return found.pack().chemistry().label() + " " + found.pack().arrangement() + " "
                + TradeUnit.MILLIAMPERE_HOUR.print(found.pack().ratedCapacityCoulombs(), 0);
    }
}
