package fettle.desk;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.assessment.PackAssessor;
import fettle.engine.rule.Rule;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** Packs and readings to show. */
public final class ShelfFixtures {
    public static final Instant NOW = Instant.parse("2026-05-09T08:00:00Z");

    private ShelfFixtures() {}

    public static Pack lipo(int cells) {
        return new Pack(
                "P07",
                Chemistry.LIPO,
                cells,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(5000),
                null,
                null,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }

    /** A pack checked two hours ago at rest. */
    public static Assessment checked(Double... cellRestVolts) {
        return assess(lipo(cellRestVolts.length), List.of(check(cellRestVolts)), List.of());
    }

    /** A pack checked two hours ago and charged to the limit since. */
    public static Assessment chargedAfter(Double... cellRestVolts) {
        Pack pack = lipo(cellRestVolts.length);
        ChargeRecord charge =
                new ChargeRecord(NOW.minus(Duration.ofHours(1)), null, 4.20 * pack.cellsInSeries(), null, "");
        return assess(pack, List.of(check(cellRestVolts)), List.of(charge));
    }

    public static Assessment neverChecked() {
        return assess(lipo(4), List.of(), List.of());
    }

    private static Check check(Double... cellRestVolts) {
        return new Check(
                NOW.minus(Duration.ofHours(2)),
                List.of(cellRestVolts),
                null,
                7200.0,
                TradeUnit.CELSIUS.toSi(21),
                List.of(),
                "",
                Set.of(),
                "");
    }

    private static Assessment assess(Pack pack, List<Check> checks, List<ChargeRecord> charges) {
        PackHistory history = new PackHistory(pack, checks, charges, List.of());
        return PackAssessor.assess(history, RuleSet.of(List.of()), MeterAccuracy.USUAL, NOW);
    }

    public static List<Rule> lipoRules() {
        return RuleSet.of(List.of()).rules(Chemistry.LIPO, null);
    }
}
