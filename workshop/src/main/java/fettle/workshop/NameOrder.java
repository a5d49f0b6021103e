package fettle.workshop;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names as people order them: figures by value, so that P2 comes before P10; letters in any case. */
final class NameOrder {
    static final Comparator<String> NATURAL =
            ((Comparator<String>) NameOrder::compareParts).thenComparing(Comparator.naturalOrder());

    private static final Pattern PART = Pattern.compile("\\d+|\\D+");

    private NameOrder() {}

    private static int compareParts(String left, String right) {
        Matcher a = PART.matcher(left);
        Matcher b = PART.matcher(right);
        while (a.find()) {
            if (!b.find()) {
                return 1;
            }
            int order = comparePart(a.group(), b.group());
            if (order != 0) {
                return order;
            }
        }
        return b.find() ? -1 : 0;
    }

    private static int comparePart(String left, String right) {
        boolean figures = Character.isDigit(left.charAt(0)) && Character.isDigit(right.charAt(0));
        return figures ? new BigInteger(left).compareTo(new BigInteger(right)) : left.compareToIgnoreCase(right);
    }
}
