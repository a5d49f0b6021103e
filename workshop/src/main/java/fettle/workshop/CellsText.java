package fettle.workshop;

import fettle.engine.units.InputException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cells in series and parallel as typed: {@code 4S}, {@code 6S2P}, {@code 4}.
 *
 * @param inSeries cells in series
 * @param inParallel cells in parallel, 1 if not stated
 */
public record CellsText(int inSeries, int inParallel) {
    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,3})\\s*(?:[sS]\\s*(?:(\\d{1,3})\\s*[pP])?)?");

    public static CellsText parse(String typed) {
        Matcher matcher = WRITTEN.matcher(typed.strip());
        if (!matcher.matches()) {
            throw new InputException(
                    "cells",
                    "cells are \"" + typed.strip() + "\"; expected cells in series and parallel, e.g. 4S or 6S2P. "
                            + "Count the balance-lead wires and take one off.");
        }
        String parallel = matcher.group(2);
        return new CellsText(Integer.parseInt(matcher.group(1)), parallel == null ? 1 : Integer.parseInt(parallel));
    }
}
