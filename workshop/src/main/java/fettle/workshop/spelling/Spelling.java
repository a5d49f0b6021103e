package fettle.workshop.spelling;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Compares spellings. Case never matters. */
public final class Spelling {
    /** Words up to this length bear one slip; longer ones two, before they look like another word. */
    private static final int SHORT = 4;

    private Spelling() {}

    /** The known spellings nearest to a mistyped one, nearest first. */
    public static List<String> nearest(String typed, Collection<String> known, int most) {
        return known.stream()
                .sorted(Comparator.comparingInt((String other) -> edits(typed, other))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(most)
                .toList();
    }

    /** The known word a typed one is a slip of, if it is near enough to one. */
    public static Optional<String> meant(String typed, Collection<String> known) {
        int slips = typed.length() <= SHORT ? 1 : 2;
        List<String> near = known.stream()
                .filter(other -> other.length() >= SHORT && Math.abs(other.length() - typed.length()) <= slips)
                .toList();
        return nearest(typed, near, 1).stream()
                .filter(other -> edits(typed, other) <= slips)
                .findFirst();
    }

    /** True if one spelling is a slip of the other: one letter in a short word, two in a longer one. */
    public static boolean near(String typed, String known) {
        return edits(typed, known) <= (Math.max(typed.length(), known.length()) <= SHORT ? 1 : 2);
    }

    /**
     * Least number of letters added, dropped, changed or swapped with their neighbour that make one the other (optimal
     * string alignment: F. J. Damerau, A technique for computer detection and correction of spelling errors, 1964).
     */
    static int edits(String from, String to) {
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
