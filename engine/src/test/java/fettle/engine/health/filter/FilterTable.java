package fettle.engine.health.filter;

import fettle.engine.health.identification.IdentifiedCell;
import fettle.engine.health.identification.MeasuredCell;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import java.util.List;
import java.util.Locale;

/** The table of the charge filter in docs/accuracy.md: the worse of starting 20 % too low and too high. */
public final class FilterTable {
    private static final double WRONG_BY = 0.2;
    private static final double SETTLED_SECONDS = 300;
    private static final double WITHIN = 0.03;

    private FilterTable() {}

    public static String made() {
        IdentifiedCell cell = MeasuredCell.fromPulses();
        StringBuilder table = new StringBuilder("""
                | profile | within 3 % for good after | worst after five minutes |
                | --- | ---: | ---: |
                """);
        for (String profile : List.of("us06_25C", "mixed1_25C")) {
            Outcome low = outcome(cell, profile, -WRONG_BY);
            Outcome high = outcome(cell, profile, WRONG_BY);
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f s | %.1f %% |%n",
                    profile.startsWith("us06") ? "US06" : "mixed",
                    Math.max(low.within(), high.within()),
                    100 * Math.max(low.worst(), high.worst())));
        }
        return table.toString();
    }

    private record Outcome(double within, double worst) {}

    private static Outcome outcome(IdentifiedCell cell, String profile, double wrongBy) {
        Trace trace = MeasuredCell.trace(profile);
        double start = profile.startsWith("us06") ? Math.min(1, cell.rest().charge(trace.packVolts()[0])) : 1;
        ChargeFilter filter = ChargeFilter.starting(
                cell, FilterNoise.USUAL, new Estimate(start + wrongBy, Math.abs(wrongBy), List.of()));
        double counted = 0;
        double worst = 0;
        double lastOutside = 0;
        for (int row = 0; row < trace.size(); row++) {
            double now = trace.timeSeconds()[row];
            if (row > 0) {
                counted += 0.5
                        * (trace.currentAmps()[row] + trace.currentAmps()[row - 1])
                        * (now - trace.timeSeconds()[row - 1]);
            }
            filter.take(now, trace.currentAmps()[row], trace.packVolts()[row], trace.temperatureKelvins()[row]);
            double off = Math.abs(filter.chargeFraction() - start + counted / cell.capacityCoulombs());
            lastOutside = off > WITHIN ? now : lastOutside;
            worst = now > SETTLED_SECONDS ? Math.max(worst, off) : worst;
        }
        return new Outcome(lastOutside, worst);
    }
}
