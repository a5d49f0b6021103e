package fettle.planner.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gives packs their best day beside all that is placed; what several packs do together is placed for all or none. */
final class Inserter {
    private static final int ATTEMPTS = 12;

    private final Model model;
    private final Board board;
    private final BoardCosts costs;
    private final DayFinder finder;

    Inserter(Board board, Ranking ranking) {
        this.model = board.model();
        this.board = board;
        costs = new BoardCosts(board, ranking);
        finder = new DayFinder(model);
    }

    /** Takes a pack off the board, with all that do something together with it; says which. */
    Set<Integer> pull(int pack) {
        Set<Integer> pulled = new LinkedHashSet<>();
        List<Integer> waiting = new ArrayList<>(List.of(pack));
        while (!waiting.isEmpty()) {
            int next = waiting.remove(waiting.size() - 1);
            if (pulled.add(next)) {
                Day day = board.day(next);
                if (day != null) {
                    day.items().forEach(item -> waiting.addAll(members(item)));
                }
            }
        }
        pulled.forEach(board::remove);
        return pulled;
    }

    /** Gives a pack that is off the board its best day. */
    void insert(int pack) {
        if (board.day(pack) == null && !insert(pack, List.of(), true)) {
            board.place(new Day(model.courses().get(pack), List.of()));
        }
    }

    private boolean insert(int pack, List<Item> forced, boolean others) {
        Course course = model.courses().get(pack);
        Costs prices = costs.of(course, forced, others);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Day day = finder.find(course, prices);
            if (!holds(day, forced)) {
                return false;
            }
            Optional<Item> clash = place(day);
            if (clash.isPresent()) {
                prices.start()[course.options().indexOf(clash.get().option())][
                                clash.get().tick()] =
                        Double.POSITIVE_INFINITY;
            } else if (!others || gather(day)) {
                return true;
            } else {
                prices = costs.of(course, forced, false);
            }
        }
        return false;
    }

    private static boolean holds(Day day, List<Item> forced) {
        List<Item.Shared> shared = day.items().stream().map(Item::shared).toList();
        return forced.stream().allMatch(item -> shared.contains(item.shared()));
    }

    /** Places a day unless its own items stand in each other's way: the one that does. */
    private Optional<Item> place(Day day) {
        for (int size = 1; size <= day.items().size(); size++) {
            Item next = day.items().get(size - 1);
            boolean fits = board.fits(next.option(), next.tick());
            board.remove(day.course().index());
            if (!fits) {
                return Optional.of(next);
            }
            board.place(new Day(day.course(), day.items().subList(0, size)));
        }
        if (day.items().isEmpty()) {
            board.place(day);
        }
        return Optional.empty();
    }

    /** Brings in the others of everything a placed day does together with them; false if not, with that day taken away. */
    private boolean gather(Day day) {
        List<Item> joint =
                day.items().stream().filter(item -> item.option().isJoint()).toList();
        if (joint.isEmpty()) {
            return true;
        }
        int pack = day.course().index();
        board.remove(pack);
        List<Day> before = board.days();
        Map<Integer, List<Item>> partners = new LinkedHashMap<>();
        joint.forEach(item -> members(item)
                .forEach(partner -> partners.computeIfAbsent(partner, one -> new ArrayList<>())
                        .add(item)));
        partners.remove(pack);
        Set<Integer> loose = new LinkedHashSet<>();
        partners.keySet().forEach(partner -> loose.addAll(pull(partner)));
        board.place(day);
        for (Map.Entry<Integer, List<Item>> partner : partners.entrySet()) {
            if (!insert(partner.getKey(), partner.getValue(), false)) {
                board.restore(before);
                board.remove(pack);
                return false;
            }
        }
        loose.forEach(this::insert);
        return true;
    }

    private Set<Integer> members(Item item) {
        Set<Integer> members = new LinkedHashSet<>();
        if (item.option().isJoint()) {
            for (Course course : model.courses()) {
                if (course.offers(item.option().key())) {
                    members.add(course.index());
                }
            }
        }
        return members;
    }
}
