package fettle.engine.pack.fit;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a craft asks of a pack or a set, and what speaks for one that has it. */
final class FitRules {
    private final Craft craft;
    private final FitWishes wishes;

    FitRules(Craft craft, FitWishes wishes) {
        this.craft = craft;
        this.wishes = wishes;
    }

    @Nullable
    Integer cells() {
        return craft.cellsInSeries();
    }

    /** Every reason against a set; empty if it suits. */
    List<String> against(PackSetMaker.Made made) {
        List<String> against = new ArrayList<>();
        if (made.standing().compareTo(Standing.GROUNDED) >= 0) {
            against.add(
                    String.join(" and ", made.tags()) + " is " + made.standing().word());
        }
        if (craft.cellsInSeries() != null && craft.cellsInSeries() != made.cells()) {
            against.add(craft.name() + " takes " + craft.cellsInSeries() + "S, this is " + made.cells() + "S");
        }
        made.packs().forEach(pack -> ConnectorMatch.misfit(craft, pack.pack()).ifPresent(against::add));
        capacity(made, against);
        mass(made, against);
        currents(made, against);
        return against;
    }

    /** The set as a fit; only for one with nothing against it. */
    Fit fit(PackSetMaker.Made made) {
        Double typical = craft.typicalAmps();
        Double seconds = typical == null ? null : Double.valueOf(made.usableCoulombs() / typical);
        return new Fit(
                made.tags(),
                made.joining(),
                made.standing(),
                made.usableCoulombs(),
                made.surelyAmps(),
                seconds,
                made.kilograms(),
                made.ageYears(),
                reasons(made, seconds),
                doubts(made));
    }

    private void capacity(PackSetMaker.Made made, List<String> against) {
        Double least = wishes.leastCoulombs();
        double holds = made.packs().stream()
                        .mapToDouble(FitPack::capacityCoulombs)
                        .min()
                        .orElseThrow()
                * (made.joining() == Fit.Joining.PARALLEL ? 2 : 1);
        if (least != null && holds < least) {
            against.add("holds " + TradeUnit.MILLIAMPERE_HOUR.print(holds, 0) + ", asked are "
                    + TradeUnit.MILLIAMPERE_HOUR.print(least, 0));
        }
    }

    private void mass(PackSetMaker.Made made, List<String> against) {
        Double mass = made.kilograms();
        Double least = wishes.leastKilograms();
        Double most = wishes.mostKilograms();
        if (mass != null && least != null && mass < least) {
            against.add("weighs " + CraftFit.grams(mass) + ", asked are at least " + CraftFit.grams(least));
        }
        if (mass != null && most != null && mass > most) {
            against.add("weighs " + CraftFit.grams(mass) + ", asked are at most " + CraftFit.grams(most));
        }
    }

    private void currents(PackSetMaker.Made made, List<String> against) {
        Double typical = craft.typicalAmps();
        if (typical != null && made.surelyAmps() < typical) {
            against.add("surely carries " + CraftFit.amps(made.surelyAmps()) + " from full to reserve, " + craft.name()
                    + " draws " + CraftFit.amps(typical));
        }
        Double peak = craft.peakAmps();
        Double rating = made.ratingAmps();
        if (peak != null && rating != null && rating < peak) {
            against.add("its label allows " + CraftFit.amps(rating) + ", " + craft.name() + " peaks at "
                    + CraftFit.amps(peak));
        }
    }

    private List<String> reasons(PackSetMaker.Made made, @Nullable Double seconds) {
        List<String> reasons = new ArrayList<>();
        if (seconds != null) {
            reasons.add(String.format(Locale.ROOT, "%.1f min at the typical current, to reserve", seconds / 60));
        } else {
            reasons.add(TradeUnit.MILLIAMPERE_HOUR.print(made.usableCoulombs(), 0) + " down to reserve");
        }
        reasons.add("surely carries " + CraftFit.amps(made.surelyAmps()));
        return reasons;
    }

    private List<String> doubts(PackSetMaker.Made made) {
        List<String> doubts = new ArrayList<>();
        if (made.standing() != Standing.READY) {
            doubts.add("standing " + made.standing().word() + ": see its page before it is used");
        }
        Double peak = craft.peakAmps();
        if (peak != null && peak > made.surelyAmps()) {
            doubts.add("the peak of " + CraftFit.amps(peak) + " is for bursts only; it surely carries "
                    + CraftFit.amps(made.surelyAmps()));
        }
        if (made.kilograms() == null && (wishes.leastKilograms() != null || wishes.mostKilograms() != null)) {
            doubts.add("not weighed");
        }
        if (made.joining() == Fit.Joining.PARALLEL) {
            doubts.add("join only at equal charge, main leads before balance leads; the worksheet Join says how near");
        } else if (made.joining() == Fit.Joining.SERIES) {
            doubts.add("charge both full and balanced first, and end by the weaker one");
        }
        return doubts;
    }
}
