package fettle.desk.kit;

import java.util.Locale;

/**
 * A column of a table of kit.
 *
 * @param heading what stands above it
 * @param align how its cells stand
 */
public record Column(String heading, Align align) {

    /** Words stand to the left, figures to the right so that their digits line up. */
    public enum Align {
        WORDS,
        FIGURE;

        /** The style it is drawn in. */
        public String style() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    static Column words(String heading) {
        return new Column(heading, Align.WORDS);
    }

    static Column figure(String heading) {
        return new Column(heading, Align.FIGURE);
    }
}
