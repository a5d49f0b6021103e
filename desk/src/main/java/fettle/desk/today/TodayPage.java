package fettle.desk.today;

import fettle.desk.frame.Figures;
import fettle.desk.frame.TaskLine;
import fettle.desk.spread.SpreadStrip;
import fettle.engine.charge.Task;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Rule;
import fettle.engine.units.Counted;
import fettle.engine.units.TradeUnit;
import fettle.workshop.PackReview;
import fettle.workshop.ShelfReview;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What needs doing, and every pack.
 *
 * @param due packs with something due, soonest first
 * @param whenWanted packs with something to do when they are next wanted
 * @param counts how many packs have each standing, e.g. {@code 3 ready}
 * @param packs worst standing first
 * @param next the next outing; {@code null} if none is to come
 */
public record TodayPage(
        List<Todo> due,
        List<Todo> whenWanted,
        List<Count> counts,
        List<Row> packs,
        @Nullable NextOuting next) {

    /**
     * The next outing.
     *
     * @param name its name
     * @param href its page
     * @param when when it begins
     * @param plan how far it is planned
     * @param charges what is to be charged for it first
     */
    public record NextOuting(String name, String href, String when, String plan, List<String> charges) {
        public NextOuting {
            charges = List.copyOf(charges);
        }
    }

    /** What is to be done with one pack. */
    public record Todo(String tag, String label, Standing standing, List<TaskLine> tasks) {}

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

    static TodayPage of(
            ShelfReview review, Function<Pack, List<Rule>> rules, @Nullable NextOuting next, Figures figures) {
        List<Row> rows =
                review.packs().stream().map(pack -> row(pack, rules, figures)).toList();
        return new TodayPage(todo(review, true, figures), todo(review, false, figures), counts(rows), rows, next);
    }

    private static List<Todo> todo(ShelfReview review, boolean dated, Figures figures) {
        Map<String, List<Task>> byPack = review.tasks().stream()
                .filter(task -> (task.due() != null) == dated)
                .collect(Collectors.groupingBy(Task::packTag, LinkedHashMap::new, Collectors.toList()));
        Map<String, Assessment> packs = review.packs().stream()
                .map(PackReview::assessment)
                .collect(Collectors.toMap(found -> found.pack().tag(), Function.identity()));
        return byPack.entrySet().stream()
                .map(entry -> todo(packs.get(entry.getKey()), entry.getValue(), figures))
                .toList();
    }

    private static Todo todo(Assessment found, List<Task> tasks, Figures figures) {
        return new Todo(found.pack().tag(), label(found), found.standing(), TaskLine.ofPack(tasks, figures));
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
                SpreadStrip.of(found, rules.apply(found.pack())),
                figures.ago(found.latestCheckAt()),
                reason(found));
    }

    private static String reason(Assessment found) {
        return found.findings().isEmpty()
                ? "passed " + Counted.of(found.passed().size(), "check")
                : Figures.unbroken(found.findings().get(0).statement());
    }

    private static String label(Assessment found) {
        return found.pack().chemistry().label() + " " + found.pack().arrangement() + " "
                + TradeUnit.MILLIAMPERE_HOUR.print(found.pack().ratedCapacityCoulombs(), 0);
    }
}
