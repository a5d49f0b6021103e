package fettle.desk.spread;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.CellState;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The spread strip: a charge axis from 0 to 100 % with one tick and a whisker of one standard deviation per cell; the
 * storage band and the reserve are hatched. Positions along the axis are per cent of its width.
 *
 * @param ticks what is known of the pack as it is now, on one line; empty where nothing is known
 * @param lanes the same one below the other, with the cells as they were read; empty where nothing is known
 * @param bands what is hatched
 * @param text the same in words
 */
public record SpreadStrip(List<Tick> ticks, List<Lane> lanes, List<Band> bands, String text) {
    private static final double SAME_CHARGE = 1e-6; // rounding of one and the same sum

    /**
     * One charge on the axis.
     *
     * @param at where the tick stands
     * @param low lower end of the whisker
     * @param high upper end of the whisker
     */
    public record Tick(String at, String low, String high) {}

    /**
     * One cell, or the pack as a whole, in figures and on the axis.
     *
     * @param name the cell's number, or {@code pack}
     * @param volts as read at rest; empty for the pack
     * @param tick where its charge stands
     * @param charge the charge, printed
     * @param past whether the record has moved the charge on since
     */
    public record Lane(String name, String volts, Tick tick, String charge, boolean past) {}

    /**
     * A hatched stretch.
     *
     * @param kind {@code storage} or {@code reserve}, the style it is drawn in
     * @param from where it starts
     * @param width how long it is
     * @param words the same in words
     */
    public record Band(String kind, String from, String width, String words) {}

    /** The strip of an assessed pack under the rules in force for it. */
    public static SpreadStrip of(Assessment found, List<Rule> rules) {
        boolean current = cellsTellOfNow(found);
        List<Lane> lanes = new ArrayList<>();
        found.cells().forEach(cell -> lanes.add(lane(cell, !current)));
        if (found.charge() != null && !current) {
            lanes.add(new Lane("pack", "", tick(found.charge()), percent(found.charge()), false));
        }
        List<Band> bands = bands(found.pack(), rules);
        List<Tick> ticks =
                lanes.stream().filter(lane -> !lane.past()).map(Lane::tick).toList();
        return new SpreadStrip(ticks, List.copyOf(lanes), bands, text(found, bands));
    }

    /** True unless the record has a charge or a run since the cells were read: the pack's charge is then another. */
    private static boolean cellsTellOfNow(Assessment found) {
        Estimate now = found.charge();
        return !found.cells().isEmpty()
                && (now == null || Math.abs(weakest(found).charge().value() - now.value()) < SAME_CHARGE);
    }

    private static CellState weakest(Assessment found) {
        return found.cells().stream()
                .min(Comparator.comparingDouble(cell -> cell.charge().value()))
                .orElseThrow();
    }

    private static Lane lane(CellState cell, boolean past) {
        return new Lane(
                Integer.toString(cell.number()),
                TradeUnit.VOLT.print(cell.restVolts(), 3),
                tick(cell.charge()),
                percent(cell.charge()),
                past);
    }

    private static Tick tick(Estimate charge) {
        double deviation = charge.standardDeviation();
        return new Tick(place(charge.value()), place(charge.value() - deviation), place(charge.value() + deviation));
    }

    private static List<Band> bands(Pack pack, List<Rule> rules) {
        List<Band> bands = new ArrayList<>();
        RestCurve curve = DefaultCurves.of(pack.chemistry());
        Double low = limit(rules, Quantity.STORAGE_LOW);
        Double high = limit(rules, Quantity.STORAGE_HIGH);
        if (low != null && high != null) {
            double from = clamp(curve.charge(low));
            double to = Math.max(from, clamp(curve.charge(high)));
            bands.add(new Band(
                    "storage", place(from), place(to - from), words("Storage band %.0f to %.0f %%.", from, to)));
        }
        Double reserve = limit(rules, Quantity.RESERVE);
        if (reserve != null) {
            bands.add(new Band("reserve", place(0), place(reserve), words("Reserve below %.0f %%.", reserve)));
        }
        return List.copyOf(bands);
    }

    private static String words(String pattern, Object... fractions) {
        return String.format(
                Locale.ROOT,
                pattern,
                Arrays.stream(fractions)
                        .map(fraction -> 100 * (Double) fraction)
                        .toArray());
    }

    private static @Nullable Double limit(List<Rule> rules, Quantity quantity) {
        return rules.stream()
                .filter(rule -> rule.quantity() == quantity)
                .map(Rule::valueSi)
                .findFirst()
                .orElse(null);
    }

    private static String text(Assessment found, List<Band> bands) {
        return charges(found) + bands.stream().map(band -> " " + band.words()).collect(Collectors.joining());
    }

    private static String charges(Assessment found) {
        Estimate now = found.charge();
        if (found.cells().isEmpty()) {
            return now == null
                    ? "Charge is not known."
                    : "Cells were not read; the pack as a whole is at " + percent(now) + ".";
        }
        return now == null || cellsTellOfNow(found)
                ? "Cells run from " + range(found) + "."
                : "By the record since the check the pack is now at " + percent(now) + "; at the check, cells ran from "
                        + range(found) + ".";
    }

    private static String range(Assessment found) {
        CellState most = found.cells().stream()
                .max(Comparator.comparingDouble(cell -> cell.charge().value()))
                .orElseThrow();
        return of(weakest(found)) + " to " + of(most);
    }

    private static String of(CellState cell) {
        return percent(cell.charge()) + " (cell " + cell.number() + ")";
    }

    private static String percent(Estimate charge) {
        return TradeUnit.PERCENT.print(charge, 0);
    }

    private static double clamp(double fraction) {
        return Math.max(0, Math.min(1, fraction));
    }

    private static String place(double fraction) {
        return String.format(Locale.ROOT, "%.2f", 100 * clamp(fraction));
    }
}
