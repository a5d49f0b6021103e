package fettle.workshop;

import fettle.engine.units.Estimate;
import java.util.List;

/**
 * What to take along on an outing: a timer for every planned run, and the packs as baggage.
 *
 * @param outing its name
 * @param timers a setting for every planned run, in their order
 * @param packing every pack as a spare in passengers' baggage
 * @param counts limits of number that are passed; empty if none is
 * @param confirm that the carrier decides, with the dates of the tables
 */
public record OutingPapers(
        String outing, List<RunTimer> timers, List<Packed> packing, List<String> counts, String confirm) {
    public OutingPapers {
        timers = List.copyOf(timers);
        packing = List.copyOf(packing);
        counts = List.copyOf(counts);
    }

    /**
     * The timer of one run.
     *
     * @param run its name
     * @param pack tag of its pack
     * @param settingSeconds the setting [s]; 0 where none can be told
     * @param typicalSeconds time until the limit in the middle run [s]
     * @param riskFraction share of runs that may come to the limit sooner
     * @param binding the limit met first; why none can be told where there is no setting
     * @param basis what it rests on
     */
    public record RunTimer(
            String run,
            String pack,
            int settingSeconds,
            Estimate typicalSeconds,
            double riskFraction,
            String binding,
            List<String> basis) {
        public RunTimer {
            basis = List.copyOf(basis);
        }
    }

    /**
     * One pack as baggage.
     *
     * @param pack its tag
     * @param ratingJoules its rating [J]
     * @param carriage what may be done with it
     * @param first what to do before leaving
     * @param why the reasons, the binding one first
     */
    public record Packed(String pack, double ratingJoules, String carriage, List<String> first, List<String> why) {
        public Packed {
            first = List.copyOf(first);
            why = List.copyOf(why);
        }
    }
}
