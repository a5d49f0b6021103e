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

    /** A problem if there is not one for each cell. Returns whether there is. */
    boolean fits(Pack pack, Remarks remarks, String mendIfFewer) {
        int read = words.size();
        int cells = pack.cellsInSeries();
        String told = read + " " + noun + (read == 1 ? "" : "s") + " for " + pack.tag() + ", which is "
                + pack.arrangement() + "; ";
        if (read > cells) {
            remarks.problem(
                    words.get(cells),
                    told + "expected " + cells
                            + ". Take the rest away, or correct the pack: cells are the balance-lead "
                            + "wires less one.");
        } else if (read < cells) {
            remarks.problem(words.get(read - 1), told + mendIfFewer);
        }
        return read == cells;
    }

    List<Double> si() {
        return List.copyOf(si);
    }

    boolean isEmpty() {
        return words.isEmpty();
    }

    boolean allRead() {
        return allRead;
    }
}
