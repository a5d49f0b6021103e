package fettle.workshop.entry;

import fettle.engine.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One figure per cell, in balance-lead order. Not thread-safe. */
final class CellReadings {
    private final String field;
    private final String noun;
    private final List<Word> words = new ArrayList<>();
    private final List<Double> si = new ArrayList<>();
    private boolean allRead = true;

    /**
     * @param field the record's field, for the place of its faults
     * @param noun what they are, for sentences, e.g. {@code cell reading}
     */
    CellReadings(String field, String noun) {
        this.field = field;
        this.noun = noun;
    }

    /** Keeps a figure, or its place if it could not be read, so that the count stays right. */
    void add(Word word, Optional<Double> value, double instead, Frame frame) {
        words.add(word);
        si.add(value.orElse(instead));
        allRead = allRead && value.isPresent();
        frame.origin(field + "." + words.size(), word);
    }

    /**
     * A problem if there is not one for each cell. Returns whether there is.
     *
     * @param mendIfMore what else a figure too many may be
     * @param mendIfFewer what to do about one too few
     */
    boolean fits(Pack pack, Remarks remarks, String mendIfMore, String mendIfFewer) {
        int read = words.size();
        int cells = pack.cellsInSeries();
        String told = read + " " + noun + (read == 1 ? "" : "s") + " for " + pack.tag() + ", which is "
                + pack.arrangement() + "; expected " + cells + ". ";
        if (read > cells) {
            remarks.problem(words.get(cells), told + mendIfMore);
        } else if (read < cells) {
            remarks.problem(words.get(read - 1), told + mendIfFewer);
        }
        return read == cells;
    }

    int count() {
        return words.size();
    }

    /** The first reading beyond that many, if there is one. */
    Optional<Word> beyond(int cells) {
        return words.size() > cells ? Optional.of(words.get(cells)) : Optional.empty();
    }

    List<Double> si() {
        return List.copyOf(si);
    }

    boolean isEmpty() {
        return words.isEmpty();
    }

    /** True if every figure could be read and lies between two SI bounds. */
    boolean allWithin(double lowest, double highest) {
        return allRead && si.stream().allMatch(value -> value >= lowest && value <= highest);
    }
}
