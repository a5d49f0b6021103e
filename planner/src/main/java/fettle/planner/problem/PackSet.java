package fettle.planner.problem;

import java.util.List;

/**
 * Packs that together power one run.
 *
 * @param takes each pack and what the run takes from it; one, or more where packs are joined
 */
public record PackSet(List<Take> takes) {
    public PackSet {
        takes = List.copyOf(takes);
    }

    /**
     * What a run takes from a pack.
     *
     * @param pack its tag
     * @param fraction share of its capacity, 0 to 1
     */
    public record Take(String pack, double fraction) {}

    public static PackSet of(String pack, double fraction) {
        return new PackSet(List.of(new Take(pack, fraction)));
    }

    public List<String> tags() {
        return takes.stream().map(Take::pack).toList();
    }
}
