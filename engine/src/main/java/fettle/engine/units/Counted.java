package fettle.engine.units;

/** A number of things in words: {@code 1 surface}, {@code 3 surfaces}. */
public final class Counted {
    private Counted() {}

    /**
     * The number with its noun.
     *
     * @param thing the noun of one of them, whose plural ends in s
     */
    public static String of(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
