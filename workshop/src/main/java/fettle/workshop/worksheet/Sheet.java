package fettle.workshop.worksheet;

import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Working;
import java.util.List;

/**
 * A worksheet's answer.
 *
 * @param verdict the answer in one sentence, with the limit that binds
 * @param figures the figures, the most wanted first
 * @param notes what else follows
 * @param caution what to watch while doing it; empty if nothing is done
 * @param working the steps
 */
public record Sheet(String verdict, List<Figure> figures, List<String> notes, String caution, Working working) {
    public Sheet {
        figures = List.copyOf(figures);
        notes = List.copyOf(notes);
    }

    /**
     * One figure.
     *
     * @param key its name in JSON
     * @param label what it is
     * @param value the figure, SI
     * @param printed the figure in trade units, with its ±
     * @param drivers what its ± comes from, the largest first, in words; empty if it has none
     */
    public record Figure(String key, String label, Estimate value, String printed, String drivers) {
        private static final int MOST_DRIVERS = 2;

        static Figure of(String key, String label, Estimate value, TradeUnit unit, int decimals) {
            String printed =
                    value.standardDeviation() > 0 ? unit.print(value, decimals) : unit.print(value.value(), decimals);
            List<String> causes = value.drivers().stream()
                    .limit(MOST_DRIVERS)
                    .map(driver -> driver.cause())
                    .toList();
            return new Figure(key, label, value, printed, String.join(", then ", causes));
        }

        static Figure exact(String key, String label, double value, TradeUnit unit, int decimals) {
            return of(key, label, new Estimate(value, 0, List.of()), unit, decimals);
        }
    }
}
