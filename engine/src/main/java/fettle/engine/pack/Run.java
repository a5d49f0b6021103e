package fettle.engine.pack;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One use of a pack in a craft.
 *
 * @param endedAt when it ended
 * @param craft the craft's name; may be empty
 * @param durationSeconds time under load [s]
 * @param remainingFraction charge that remained, 0 … 1; {@code null} if not noted
 * @param remainingPackVolts pack volts that remained [V]; {@code null} if not noted
 * @param warmestKelvins warmest pack temperature seen [K]; {@code null} if not noted
 * @param note free text
 */
public record Run(
        Instant endedAt,
        String craft,
        double durationSeconds,
        @Nullable Double remainingFraction,
        @Nullable Double remainingPackVolts,
        @Nullable Double warmestKelvins,
        String note) {
    public Run {
        new Faults()
                .range("duration", "run time", durationSeconds, TradeUnit.MINUTE, 0.1, 1_440, "Give minutes.")
                .range("remaining", "what remained", remainingFraction, TradeUnit.PERCENT, 0, 100, "Give per cent.")
                .range(
                        "remainingPackVolts",
                        "volts that remained",
                        remainingPackVolts,
                        TradeUnit.VOLT,
                        0,
                        120,
                        "Give the whole pack's volts.")
                .range("warmest", "temperature", warmestKelvins, TradeUnit.CELSIUS, -40, 200, "Write 41C or 106F.")
                .refuse();
    }
}
