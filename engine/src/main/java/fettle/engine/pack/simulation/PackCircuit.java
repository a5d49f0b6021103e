package fettle.engine.pack.simulation;

import java.util.Arrays;
import java.util.List;

/**
 * A pack: places in series and the resistance of its leads and connector.
 *
 * @param name how messages and results call it
 * @param groups the places in series, at least one
 * @param leadOhms leads and connector together [Ω], ≥ 0
 */
public record PackCircuit(String name, List<SeriesGroup> groups, double leadOhms) {
    public PackCircuit {
        groups = List.copyOf(groups);
    }

    /** A plain series string. */
    public static PackCircuit series(String name, double leadOhms, CellAt... cells) {
        return new PackCircuit(name, Arrays.stream(cells).map(SeriesGroup::of).toList(), leadOhms);
    }
}
