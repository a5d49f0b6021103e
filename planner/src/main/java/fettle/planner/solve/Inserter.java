package fettle.planner.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Gives packs their best day beside all that is placed; what several packs do together is placed for all or none. */
final class Inserter {
    private static final int ATTEMPTS = 12;

    private final Model model;
    private final Board board;
    private Weighing weighing;
    private final DayFinder finder;

    Inserter(Board board, Weighing weighing) {
        this.model = board.model();
        this.board = board;
        this.weighing = weighing;
        finder = new DayFinder(model);
    }

    /** Weighs from now on like this. */
    void weigh(Weighing other) {
        weighing = other;
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
        BoardCosts prices = new BoardCosts(board, weighing, course, forced, others);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Day day = finder.find(course, prices);
            if (!holds(day, forced)) {
                return false;
            }
            Optional<Item> clash = place(day);
            if (clash.isPresent()) {
                prices.bar(clash.get());
            } else if (!others || gather(pack)) {
                return true;
            } else {
                prices = new BoardCosts(board, weighing, course, forced, false);
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
        List<Item> items = new ArrayList<>();
        for (Item next : day.items()) {
            int place = board.fit(next.option(), next.tick());
            board.remove(day.course().index());
            if (place == Board.NOWHERE) {
                return Optional.of(next);
            }
            items.add(next.on(place));
            board.place(new Day(day.course(), items));
        }
        if (day.items().isEmpty()) {
            board.place(day);
        }
        return Optional.empty();
    }

    /** Brings in the others of everything a placed day does together with them; false if not, with that day taken away. */
    private boolean gather(int pack) {
        Day day = Objects.requireNonNull(board.day(pack));
        List<Item> joint =
                day.items().stream().filter(item -> item.option().isJoint()).toList();
        if (joint.isEmpty()) {
            return true;
        }
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
