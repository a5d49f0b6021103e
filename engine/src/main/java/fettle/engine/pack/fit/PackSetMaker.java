package fettle.engine.pack.fit;

import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Takes packs together as one.
 *
 * <p>In series the same current runs through both: the least capacity and the least current count, volts and resistances
 * add. Side by side the current divides as the conductances (Kirchhoff's laws): the set carries what the pack that reaches
 * its limit first allows, and gives charge until the first is at its reserve if shares stay as they are.
 * <p>Leaves out: how shares shift while the packs' charges draw apart and together; leads between them.
 */
final class PackSetMaker {
    /** Capacities of packs in series may differ by this share of the larger; common practice, no source. */
    static final double SERIES_CAPACITY = 0.1;

    /** Resistances of packs side by side may differ by this share of the larger; common practice, no source. */
    static final double PARALLEL_RESISTANCE = 0.3;

    private PackSetMaker() {}

    /**
     * A set as the craft sees it.
     *
     * @param packs its packs
     * @param joining how they are joined
     * @param cells cells in series of the whole
     * @param usableCoulombs charge down to where the first is at its reserve [C]
     * @param surelyAmps current it carries with two standard deviations to spare [A]
     * @param ratingAmps label's current of the whole [A]; {@code null} if a label says none
     * @param kilograms mass; {@code null} if one was not weighed
     */
    record Made(
            List<FitPack> packs,
            Fit.Joining joining,
            int cells,
            double usableCoulombs,
            double surelyAmps,
            @Nullable Double ratingAmps,
            @Nullable Double kilograms) {
        List<String> tags() {
            return packs.stream().map(FitPack::tag).toList();
        }

        Standing standing() {
            return packs.stream()
                    .map(FitPack::standing)
                    .max(Standing::compareTo)
                    .orElseThrow();
        }

        @Nullable
        Double ageYears() {
            Double oldest = null;
            for (FitPack pack : packs) {
                Double age = pack.ageYears();
                if (age == null) {
                    return null;
                }
                oldest = oldest == null ? age : Double.valueOf(Math.max(oldest, age));
            }
            return oldest;
        }
    }

    static Made alone(FitPack pack) {
        return new Made(
                List.of(pack),
                Fit.Joining.ALONE,
                pack.pack().cellsInSeries(),
                pack.usableCoulombs(),
                pack.surelyAmps(),
                pack.pack().dischargeRatingAmps(),
                pack.pack().massKilograms());
    }

    static Made series(FitPack one, FitPack other) {
        return new Made(
                List.of(one, other),
                Fit.Joining.SERIES,
                one.pack().cellsInSeries() + other.pack().cellsInSeries(),
                Math.min(one.usableCoulombs(), other.usableCoulombs()),
                Math.min(one.surelyAmps(), other.surelyAmps()),
                both(one.pack().dischargeRatingAmps(), other.pack().dischargeRatingAmps(), Math::min),
                both(one.pack().massKilograms(), other.pack().massKilograms(), Double::sum));
    }

    static Made parallel(FitPack one, FitPack other) {
        double share = other.packOhms() / (one.packOhms() + other.packOhms());
        return new Made(
                List.of(one, other),
                Fit.Joining.PARALLEL,
                one.pack().cellsInSeries(),
                Math.min(one.usableCoulombs() / share, other.usableCoulombs() / (1 - share)),
                Math.min(one.surelyAmps() / share, other.surelyAmps() / (1 - share)),
                both(
                        times(one.pack().dischargeRatingAmps(), 1 / share),
                        times(other.pack().dischargeRatingAmps(), 1 / (1 - share)),
                        Math::min),
                both(one.pack().massKilograms(), other.pack().massKilograms(), Double::sum));
    }

    /** Why two packs must not be joined that way; empty if they may. */
    static List<String> refusals(FitPack one, FitPack other, Fit.Joining joining) {
        List<String> reasons = new ArrayList<>();
        String both = one.tag() + " and " + other.tag();
        if (one.pack().chemistry() != other.pack().chemistry()) {
            reasons.add(both + " are of unlike chemistry, which is never joined");
        }
        if (joining == Fit.Joining.PARALLEL) {
            if (one.pack().cellsInSeries() != other.pack().cellsInSeries()) {
                reasons.add(both + " have unlike cell counts, which are never put side by side");
            }
            double apart = apart(one.packOhms(), other.packOhms());
            if (apart > PARALLEL_RESISTANCE) {
                reasons.add(String.format(
                        Locale.ROOT,
                        "resistances of %s differ by %.0f %%; at most %.0f %%, or one of them takes most of the current",
                        both,
                        100 * apart,
                        100 * PARALLEL_RESISTANCE));
            }
        } else {
            double apart = apart(one.capacityCoulombs(), other.capacityCoulombs());
            if (apart > SERIES_CAPACITY) {
                reasons.add(String.format(
                        Locale.ROOT,
                        "capacities of %s differ by %.0f %% (%s, %s); at most %.0f %%, or the smaller is driven empty",
                        both,
                        100 * apart,
                        TradeUnit.MILLIAMPERE_HOUR.print(one.capacityCoulombs(), 0),
                        TradeUnit.MILLIAMPERE_HOUR.print(other.capacityCoulombs(), 0),
                        100 * SERIES_CAPACITY));
            }
        }
        return reasons;
    }

    private static double apart(double one, double other) {
        return Math.abs(one - other) / Math.max(one, other);
    }

    private static @Nullable Double both(@Nullable Double one, @Nullable Double other, DoubleBinaryOperator how) {
        return one == null || other == null ? null : Double.valueOf(how.applyAsDouble(one, other));
    }

    private static @Nullable Double times(@Nullable Double value, double factor) {
        return value == null ? null : Double.valueOf(value * factor);
    }
}
