package fettle.engine.supply.receiver;

import fettle.engine.supply.wire.Conductor;
import fettle.engine.supply.wire.Lead;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes tried one by one on the sums themselves. */
final class Improvements {
    private Improvements() {}

    /** What helps, the most helpful first: volts with one servo stalled, then share of the peak. */
    static List<Improvement> of(ReceiverSupply supply) {
        List<Improvement> all = new ArrayList<>();
        all.add(tried(
                "a supply of twice the current",
                supply,
                supply.with(supply.regulator().stronger(2))));
        all.add(tried("a second feed lead beside the first", supply, supply.with(doubled(supply.feed()))));
        for (ServoDraw servo : supply.servos()) {
            all.add(tried(
                    "free what loads " + servo.name() + ", so that it never stalls",
                    supply,
                    supply.with(supply.servos().stream()
                            .map(other -> other.equals(servo) ? freed(servo) : other)
                            .toList())));
        }
        return all.stream()
                .filter(change -> change.marginVolts() > 1e-3 || change.peakShare() > 1e-2) // 1 mV, 1 %
                .sorted(Comparator.comparingDouble(Improvement::marginVolts)
                        .thenComparingDouble(Improvement::peakShare)
                        .reversed())
                .toList();
    }

    private static Improvement tried(String change, ReceiverSupply before, ReceiverSupply after) {
        return new Improvement(change, margin(after) - margin(before), peak(before) - peak(after));
    }

    private static double margin(ReceiverSupply supply) {
        return PowerAssessment.power(supply, Scenario.ONE_STALLED)
                .resetMarginVolts()
                .value();
    }

    private static double peak(ReceiverSupply supply) {
        return supply.amps(Scenario.ALL_STALLED) / supply.regulator().peakAmps();
    }

    private static Lead doubled(Lead lead) {
        return new Lead(
                new Conductor(2 * lead.conductor().areaSquareMetres()),
                lead.oneWayMetres(),
                lead.kelvins(),
                lead.contactOhms() / 2);
    }

    private static ServoDraw freed(ServoDraw servo) {
        return new ServoDraw(
                servo.name(), servo.idleAmps(), servo.movingAmps(), servo.movingAmps(), servo.basis(), servo.lead());
    }
}
