package fettle.workshop;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Run;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Entries in the journal's words, with trade units. */
final class EntryWords {
    private EntryWords() {}

    /** {@code check of P07: 3.840 3.830 3.850 3.840 V, 21 °C}. */
    static String check(String tag, Check check) {
        List<String> parts = new ArrayList<>();
        if (!check.cellRestVolts().isEmpty()) {
            parts.add(check.cellRestVolts().stream()
                            .map(volts -> TradeUnit.VOLT.print(volts, 3).replace(" V", ""))
                            .collect(Collectors.joining(" "))
                    + " V");
        }
        add(parts, check.packRestVolts(), TradeUnit.VOLT, 2, " pack");
        add(parts, check.temperatureKelvins(), TradeUnit.CELSIUS, 0, "");
        new TreeSet<>(check.signs()).forEach(sign -> parts.add(sign.label()));
        return "check of " + tag + ": " + String.join(", ", parts);
    }

    /** {@code charged P07: 3100 mAh put back}. */
    static String charge(String tag, ChargeRecord charge) {
        List<String> parts = new ArrayList<>();
        add(parts, charge.returnedCoulombs(), TradeUnit.MILLIAMPERE_HOUR, 0, " put back");
        add(parts, charge.endPackVolts(), TradeUnit.VOLT, 2, " at the end");
        add(parts, charge.warmestKelvins(), TradeUnit.CELSIUS, 0, " at the warmest");
        return "charged " + tag + ": " + String.join(", ", parts);
    }

    /** {@code ran P07 in Kestrel: 6.5 min, 30 % left}. */
    static String run(String tag, Run run) {
        List<String> parts = new ArrayList<>();
        add(parts, run.durationSeconds(), TradeUnit.MINUTE, 1, "");
        add(parts, run.remainingFraction(), TradeUnit.PERCENT, 0, " left");
        add(parts, run.remainingPackVolts(), TradeUnit.VOLT, 2, " left");
        add(parts, run.warmestKelvins(), TradeUnit.CELSIUS, 0, " at the warmest");
        String craft = run.craft().isBlank() ? "" : " in " + run.craft();
        return "ran " + tag + craft + ": " + String.join(", ", parts);
    }

    private static void add(List<String> parts, @Nullable Double si, TradeUnit unit, int decimals, String after) {
        if (si != null) {
            parts.add(unit.print(si, decimals) + after);
        }
    }
}
