package fettle.engine.health.capacity;

import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The twelve pairs of the worked case in battery/capacity-estimation.md: true capacity 2.000 Ah, noise drawn once. */
final class WorkedCase {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");
    private static final double[][] ROWS = {
        {0.5970, 1.2394, 0.012, 0.010},
        {-0.5555, -1.1033, 0.015, 0.010},
        {0.7135, 1.3988, 0.012, 0.012},
        {-0.4597, -0.9598, 0.020, 0.010},
        {0.3095, 0.7051, 0.030, 0.008},
        {-0.6606, -1.3139, 0.012, 0.012},
        {0.5799, 1.1647, 0.015, 0.010},
        {-0.2953, -0.5939, 0.030, 0.008},
        {0.7448, 1.4919, 0.010, 0.012},
        {-0.5346, -1.0506, 0.020, 0.010},
        {0.4461, 0.8666, 0.020, 0.010},
        {-0.6139, -1.2179, 0.012, 0.012}
    };

    private WorkedCase() {}

    static List<CapacityPair> pairs() {
        List<CapacityPair> pairs = new ArrayList<>();
        for (double[] row : ROWS) {
            pairs.add(new CapacityPair(
                    START.plusSeconds(86_400L * pairs.size()),
                    row[0],
                    row[2],
                    0,
                    TradeUnit.AMPERE_HOUR.toSi(row[1]),
                    TradeUnit.AMPERE_HOUR.toSi(row[3]),
                    "worked case"));
        }
        return pairs;
    }
}
