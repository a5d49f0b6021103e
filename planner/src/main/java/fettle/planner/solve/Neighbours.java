package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Chooses packs whose days are to be made anew together: any, or some that are busy about the same time. */
final class Neighbours {
    private static final int MOST = 6;

    private final Board board;
    private final Random random;

    Neighbours(Board board, Random random) {
        this.board = board;
        this.random = random;
    }

    List<Integer> choose() {
        int packs = board.model().courses().size();
        int size = 1 + random.nextInt(Math.min(packs, MOST));
        List<Integer> from = random.nextBoolean() ? busyTogether() : all(packs);
        Collections.shuffle(from, random);
        return from.subList(0, Math.min(size, from.size()));
    }

    private static List<Integer> all(int packs) {
        List<Integer> all = new ArrayList<>();
        for (int pack = 0; pack < packs; pack++) {
            all.add(pack);
        }
        return all;
    }

    private List<Integer> busyTogether() {
        List<Day> days = board.days();
        Day pivot = days.get(random.nextInt(days.size()));
        if (pivot.items().isEmpty()) {
            return all(days.size());
        }
        Item at = pivot.items().get(random.nextInt(pivot.items().size()));
        int reach = 1 + random.nextInt(2 * Math.max(1, at.option().ticks()));
        List<Integer> busy = new ArrayList<>();
        for (Day day : days) {
            boolean near = day.items().stream()
                    .anyMatch(item -> item.tick() < at.tick() + at.option().ticks() + reach
                            && at.tick() < item.tick() + item.option().ticks() + reach);
            if (near || random.nextInt(4) == 0) {
                busy.add(day.course().index());
            }
        }
        return busy;
    }
}
