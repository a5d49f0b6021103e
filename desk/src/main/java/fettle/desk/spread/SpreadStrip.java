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
 * storage band and the reserve are hatched. Positions along the axis are per cent of its width, across it pixels.
 *
 * @param ticks one per cell, and one for the pack where its charge is known otherwise; empty where nothing is known
 * @param bands what is hatched
 * @param height height of the lanes, without the axis
 * @param text the same in words
 */
public record SpreadStrip(List<Tick> ticks, List<Band> bands, int height, String text) {
    private static final int LANE = 14;
    private static final int SLIM = 18;
    private static final double LABEL_FITS = 0.75; // room for the longest label on a phone
    private static final double SAME_CHARGE = 1e-6; // rounding of one and the same sum

    /**
     * One cell.
     *
     * @param label what stands beside it
     * @param labelAt where the label stands
     * @param before whether the label ends there, because the axis ends behind it
     * @param at where the tick stands
     * @param low lower end of the whisker
     * @param high upper end of the whisker
     * @param top upper end of the tick
     * @param middle where the whisker runs
     * @param bottom lower end of the tick
     */
    public record Tick(
            String label,
            String labelAt,
            boolean before,
            String at,
            String low,
            String high,
            int top,
            int middle,
            int bottom) {}

    /**
     * A hatched stretch.
     *
     * @param kind {@code storage} or {@code reserve}, the style it is drawn in
     * @param from where it starts
     * @param width how long it is
     * @param words the same in words
     */
    public record Band(String kind, String from, String width, String words) {}

    /** One lane per cell, as on the pack page. */
    public static SpreadStrip inLanes(Assessment found, List<Rule> rules) {
        List<Tick> ticks = new ArrayList<>();
        for (CellState cell : found.cells()) {
            int top = ticks.size() * LANE;
            ticks.add(tick(Integer.toString(cell.number()), cell.charge(), top, top + LANE));
        }
        if (found.charge() != null && !cellsTellOfNow(found)) {
            int top = ticks.size() * LANE;
            ticks.add(tick("pack now", found.charge(), top, top + LANE));
        }
        List<Band> bands = bands(found.pack(), rules);
        return new SpreadStrip(ticks, bands, Math.max(1, ticks.size()) * LANE, text(found, bands));
    }

    /** All cells on one lane, as in a table. */
    public static SpreadStrip slim(Assessment found, List<Rule> rules) {
        List<Tick> ticks = new ArrayList<>();
        if (cellsTellOfNow(found)) {
            found.cells().forEach(cell -> ticks.add(tick("", cell.charge(), 0, SLIM)));
        } else if (found.charge() != null) {
            ticks.add(tick("", found.charge(), 0, SLIM));
        }
        List<Band> bands = bands(found.pack(), rules);
        return new SpreadStrip(ticks, bands, SLIM, text(found, bands));
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

    private static Tick tick(String label, Estimate charge, int top, int bottom) {
        double deviation = charge.standardDeviation();
        boolean before = charge.value() + deviation > LABEL_FITS;
        return new Tick(
                label,
                place(before ? charge.value() - deviation : charge.value() + deviation),
                before,
                place(charge.value()),
                place(charge.value() - deviation),
                place(charge.value() + deviation),
                top + 2,
                (top + bottom) / 2,
                bottom - 2);
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
