package fettle.engine.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Collects all faults of one input before refusing it. Not thread-safe. */
public final class Faults {
    private final List<Fault> found = new ArrayList<>();

    public Faults add(String field, String sentence) {
        found.add(new Fault(field, sentence));
        return this;
    }

    /** Requires a finite SI value between two bounds, told in the trade unit. {@code null} passes: not stated. */
    public Faults range(
            String field,
            String what,
            @Nullable Double si,
            TradeUnit unit,
            double lowest,
            double highest,
            String mend) {
        if (si == null || (Double.isFinite(si) && unit.fromSi(si) >= lowest && unit.fromSi(si) <= highest)) {
            return this;
        }
        String value = Double.isFinite(si) ? trim(unit.fromSi(si)) + " " + unit.symbol() : "not a number";
        return add(
                field,
                what + " is " + value + "; expected " + trim(lowest) + " to " + trim(highest) + " " + unit.symbol()
                        + ". " + mend);
    }

    /** Adds everything another collection found; says how many that were. */
    public int addAll(Faults others) {
        found.addAll(others.found);
        return others.found.size();
    }

    /** Throws if anything was found. */
    public void refuse() {
        if (!found.isEmpty()) {
            throw new InputException(found);
        }
    }

    private static String trim(double value) {
        String printed = String.format(Locale.ROOT, "%.4f", value);
        return printed.replaceAll("\\.?0+$", "");
    }
}
