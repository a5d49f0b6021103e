package fettle.engine.pack.assessment;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A pack kept full for longer than the storage-time limit. */
final class KeptFullInspection implements Inspection {
    @Override
    public String passes() {
        return "not kept full past the storage-time limit";
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        Instant since = ChargeTimeline.fullSince(packCase.evidence());
        if (since == null) {
            return List.of();
        }
        Rule rule = packCase.limits().rule(Quantity.STORAGE_TIME);
        double seconds = Duration.between(since, packCase.now()).toSeconds();
        if (seconds <= rule.valueSi()) {
            return List.of();
        }
        String days = TradeUnit.DAY.print(seconds, 0);
        return List.of(Inspection.against(
                rule,
                "kept-full",
                Standing.TEND,
                "kept full for " + days + "; limit " + rule.print(),
                "Use it or bring it to storage now: at full charge a cell ages 1.5 to 5 times as fast as at half charge.",
                List.of(
                        "full since = " + since,
                        "full means at least " + TradeUnit.PERCENT.print(ChargeTimeline.FULL_FRACTION, 0),
                        "kept full = " + days)));
    }
}
