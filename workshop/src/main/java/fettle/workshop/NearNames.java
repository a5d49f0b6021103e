package fettle.workshop;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which known names a mistyped one is near to. */
final class NearNames {
    private static final int MOST_SHOWN = 3;

    private NearNames() {}

    /** A refusal of an unknown name that says which are near. */
    static UnknownNameException unknown(KitWords<?> words, String name, List<String> known) {
        if (known.isEmpty()) {
            return new UnknownNameException(
                    name + " is not in this book, which has no " + words.noun() + " yet. Add it first.");
        }
        return new UnknownNameException(name + " is not in this book; nearest " + words.nameNoun() + ": "
                + String.join(", ", nearest(name, known)) + ".");
    }

    static List<String> nearest(String name, List<String> known) {
        return known.stream()
                .sorted(Comparator.comparingInt((String other) -> edits(name, other))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST_SHOWN)
                .toList();
    }

    /**
     * Least number of letters added, dropped, changed or swapped with their neighbour that make one name the other, in
     * any case (optimal string alignment: F. J. Damerau, A technique for computer detection and correction of spelling
     * errors, 1964).
     */
    private static int edits(String from, String to) {
        String a = from.toLowerCase(Locale.ROOT);
        String b = to.toLowerCase(Locale.ROOT);
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                edits[i][j] = i == 0 || j == 0 ? i + j : least(edits, a, b, i, j);
            }
        }
        return edits[a.length()][b.length()];
    }

    private static int least(int[][] edits, String a, String b, int i, int j) {
        int change = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(change, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, 1 + edits[i - 2][j - 2]) : least;
    }
}
