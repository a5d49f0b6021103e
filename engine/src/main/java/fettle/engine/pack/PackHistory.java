package fettle.engine.pack;

import java.util.List;

/** Everything recorded of one pack, each list oldest first. */
public record PackHistory(Pack pack, List<Check> checks, List<ChargeRecord> charges, List<Run> runs) {
    public PackHistory {
        checks = List.copyOf(checks);
        charges = List.copyOf(charges);
        runs = List.copyOf(runs);
    }
}
