package fettle.engine.pack;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A charge as noted by hand.
 *
 * @param endedAt when it ended
 * @param returnedCoulombs put-back [C]; {@code null} if not noted
 * @param endPackVolts pack volts at the end [V]; {@code null} if not noted
 * @param warmestKelvins warmest pack temperature seen [K]; {@code null} if not noted
 * @param note free text
 */
public record ChargeRecord(
        Instant endedAt,
        @Nullable Double returnedCoulombs,
        @Nullable Double endPackVolts,
        @Nullable Double warmestKelvins,
        String note) {
    public ChargeRecord {
        Faults faults = new Faults();
        faults.range(
                "returned",
                "put-back",
                returnedCoulombs,
                TradeUnit.MILLIAMPERE_HOUR,
                0,
                200_000,
                "Read the mAh off the charger.");
        faults.range("endPackVolts", "end volts", endPackVolts, TradeUnit.VOLT, 0, 120, "Give the whole pack's volts.");
        faults.range("warmest", "temperature", warmestKelvins, TradeUnit.CELSIUS, -40, 200, "Write 31C or 88F.");
        if (returnedCoulombs == null && endPackVolts == null) {
            faults.add("returned", "the charge has neither put-back nor end volts. Give at least one.");
        }
        faults.refuse();
    }
}
