package fettle.engine.pack;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** A few packs and readings to test with. */
public final class Packs {
    public static final Instant NOW = Instant.parse("2026-05-09T08:00:00Z");

    private Packs() {}

    public static Pack lipo(int cells, double milliampereHours) {
        return pack(Chemistry.LIPO, cells, milliampereHours, Pack.Identity.CONFIRMED);
    }

    public static Pack pack(Chemistry chemistry, int cells, double milliampereHours, Pack.Identity identity) {
        return new Pack(
                "P07",
                chemistry,
                cells,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours),
                null,
                null,
                null,
                "",
                null,
                "",
                identity,
                List.of(),
                "");
    }

    /** A check after two hours' rest at 21 °C. */
    public static Check check(double daysAgo, Double... volts) {
        return check(daysAgo, Set.of(), volts);
    }

    public static Check check(double daysAgo, Set<Check.Sign> signs, Double... volts) {
        return new Check(
                daysBefore(daysAgo),
                Arrays.asList(volts),
                null,
                7200.0,
                TradeUnit.CELSIUS.toSi(21),
                List.of(),
                "",
                signs,
                "");
    }

    public static Check packVolts(double daysAgo, double volts) {
        return new Check(daysBefore(daysAgo), List.of(), volts, 7200.0, null, List.of(), "", Set.of(), "");
    }

    public static ChargeRecord charged(double daysAgo, double endVolts) {
        return new ChargeRecord(daysBefore(daysAgo), null, endVolts, null, "");
    }

    public static PackHistory history(Pack pack, Check... checks) {
        return new PackHistory(pack, List.of(checks), List.of(), List.of());
    }

    public static Instant daysBefore(double days) {
        return NOW.minus(Duration.ofSeconds((long) TradeUnit.DAY.toSi(days)));
    }
}
