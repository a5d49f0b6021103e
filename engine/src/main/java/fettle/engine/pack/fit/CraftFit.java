package fettle.engine.pack.fit;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The packs for a craft: those that suit it, the best first, and why the others do not.
 *
 * <p>Ranked by standing, then by whether the current is had with room, then by how long it lasts, then by youth. Room is
 * half as much again as the typical current (common practice, no source).
 *
 * @param fits packs and pairs that suit it, the best first; pairs behind single packs of the same rank
 * @param misfits the others, each with every reason
 * @param remarks what is not known about the craft and would sharpen the answer
 */
public record CraftFit(List<Fit> fits, List<Misfit> misfits, List<String> remarks) {
    private static final double ROOM = 1.5;

    public CraftFit {
        fits = List.copyOf(fits);
        misfits = List.copyOf(misfits);
        remarks = List.copyOf(remarks);
    }

    /**
     * Ranks packs for a craft.
     *
     * @param packs the packs to look at
     * @param wishes what else is asked
     */
    public static CraftFit of(Craft craft, FitWishes wishes, List<FitPack> packs) {
        List<Fit> fits = new ArrayList<>();
        List<Misfit> misfits = new ArrayList<>();
        FitRules rules = new FitRules(craft, wishes);
        for (FitPack pack : packs) {
            judge(rules, PackSetMaker.alone(pack), fits, misfits);
        }
        for (int at = 0; at < packs.size(); at++) {
            for (FitPack other : packs.subList(at + 1, packs.size())) {
                pair(rules, packs.get(at), other, fits, misfits);
            }
        }
        fits.sort(order(craft));
        return new CraftFit(fits, misfits, remarks(craft));
    }

    private static void judge(FitRules rules, PackSetMaker.Made made, List<Fit> fits, List<Misfit> misfits) {
        List<String> against = rules.against(made);
        if (against.isEmpty()) {
            fits.add(rules.fit(made));
        } else {
            misfits.add(new Misfit(made.tags(), against));
        }
    }

    /** Only pairs whose cells make the craft's are looked at: all others are no question anybody asks. */
    private static void pair(FitRules rules, FitPack one, FitPack other, List<Fit> fits, List<Misfit> misfits) {
        Integer cells = rules.cells();
        if (cells == null || !planned(one) || !planned(other)) {
            return;
        }
        if (one.pack().cellsInSeries() + other.pack().cellsInSeries() == cells) {
            joined(rules, one, other, Fit.Joining.SERIES, fits, misfits);
        }
        if (one.pack().cellsInSeries() == cells && other.pack().cellsInSeries() == cells) {
            joined(rules, one, other, Fit.Joining.PARALLEL, fits, misfits);
        }
    }

    private static boolean planned(FitPack pack) {
        return pack.standing() != Standing.GROUNDED && pack.standing() != Standing.RETIRED;
    }

    private static void joined(
            FitRules rules, FitPack one, FitPack other, Fit.Joining how, List<Fit> fits, List<Misfit> misfits) {
        List<String> never = PackSetMaker.refusals(one, other, how);
        if (!never.isEmpty()) {
            misfits.add(new Misfit(List.of(one.tag(), other.tag()), never));
            return;
        }
        judge(
                rules,
                how == Fit.Joining.SERIES ? PackSetMaker.series(one, other) : PackSetMaker.parallel(one, other),
                fits,
                misfits);
    }

    private static Comparator<Fit> order(Craft craft) {
        Double typical = craft.typicalAmps();
        return Comparator.comparing(Fit::standing)
                .thenComparing(fit -> typical != null && fit.surelyAmps() < ROOM * typical)
                .thenComparing(fit -> fit.joining() != Fit.Joining.ALONE)
                .thenComparing(Comparator.comparingDouble(CraftFit::lasts).reversed())
                .thenComparingDouble(CraftFit::age)
                .thenComparing(fit -> String.join(" ", fit.tags()));
    }

    private static double lasts(Fit fit) {
        Double seconds = fit.seconds();
        return seconds == null ? fit.capacityCoulombs() : seconds;
    }

    private static double age(Fit fit) {
        Double years = fit.ageYears();
        return years == null ? Double.MAX_VALUE : years;
    }

    private static List<String> remarks(Craft craft) {
        List<String> remarks = new ArrayList<>();
        ask(
                craft.cellsInSeries(),
                "how many cells " + craft.name() + " takes is not entered: none is refused by cells"
                        + " and no pair is looked at",
                remarks);
        ask(
                craft.typicalAmps(),
                "the typical current of " + craft.name() + " is not entered: how long a pack lasts and"
                        + " whether it carries that current cannot be told",
                remarks);
        ask(
                craft.peakAmps(),
                "the peak current of " + craft.name() + " is not entered: labels are not compared with it",
                remarks);
        return remarks;
    }

    private static void ask(@Nullable Object known, String otherwise, List<String> remarks) {
        if (known == null) {
            remarks.add(otherwise);
        }
    }

    /** A current in words. */
    static String amps(double amps) {
        return TradeUnit.AMPERE.print(amps, 1);
    }

    /** A mass in words. */
    static String grams(double kilograms) {
        return String.format(Locale.ROOT, "%.0f g", TradeUnit.GRAM.fromSi(kilograms));
    }
}
