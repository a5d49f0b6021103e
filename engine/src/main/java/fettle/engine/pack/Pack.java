package fettle.engine.pack;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pack as registered: cells in series (and parallel) with one tag.
 *
 * @param tag the tag on it, e.g. {@code P07}: letters, digits, dash or dot, no spaces
 * @param chemistry as a person confirmed it
 * @param cellsInSeries 1 … 24
 * @param cellsInParallel 1 … 20
 * @param ratedCapacityCoulombs the label's capacity [C]
 * @param chargeRatingAmps largest charge current of the label [A]; {@code null} if not stated
 * @param dischargeRatingAmps largest continuous current of the label [A]; {@code null} if not stated
 * @param massKilograms [kg]; {@code null} if not weighed
 * @param connector main connector, as the keeper calls it; may be empty
 * @param bought day it was bought; {@code null} if not known
 * @param keeper who keeps it; may be empty
 * @param identity whether a person confirmed chemistry and cell count
 * @param makersLimits limits of its maker that override rules
 * @param note free text
 */
public record Pack(
        String tag,
        Chemistry chemistry,
        int cellsInSeries,
        int cellsInParallel,
        double ratedCapacityCoulombs,
        @Nullable Double chargeRatingAmps,
        @Nullable Double dischargeRatingAmps,
        @Nullable Double massKilograms,
        String connector,
        @Nullable LocalDate bought,
        String keeper,
        Identity identity,
        List<RuleOverride> makersLimits,
        String note) {

    /** Whether a person has confirmed chemistry and cell count by label or by counting leads. */
    public enum Identity {
        CONFIRMED,
        UNCONFIRMED
    }

    private static final int MOST_SERIES = 24;
    private static final int MOST_PARALLEL = 20;

    public Pack {
        makersLimits = List.copyOf(makersLimits);
        Faults faults = new Faults();
        if (!tag.matches("[A-Za-z][A-Za-z0-9._-]{0,15}")) {
            faults.add(
                    "tag",
                    "tag is \"" + tag + "\"; expected a letter, then up to 15 letters, digits, dots or dashes. "
                            + "Use the tag written on the pack, e.g. P07.");
        }
        if (cellsInSeries < 1 || cellsInSeries > MOST_SERIES) {
            faults.add(
                    "cellsInSeries",
                    "cells in series are " + cellsInSeries + "; expected 1 to " + MOST_SERIES
                            + ". Count the balance-lead wires and take one off.");
        }
        if (cellsInParallel < 1 || cellsInParallel > MOST_PARALLEL) {
            faults.add(
                    "cellsInParallel",
                    "cells in parallel are " + cellsInParallel + "; expected 1 to " + MOST_PARALLEL
                            + ". Most packs have 1.");
        }
        faults.range(
                "ratedCapacity",
                "capacity",
                ratedCapacityCoulombs,
                TradeUnit.MILLIAMPERE_HOUR,
                10,
                200_000,
                "Read the mAh off the label.");
        faults.range(
                "chargeRating",
                "charge rating",
                chargeRatingAmps,
                TradeUnit.AMPERE,
                0.01,
                1_000,
                "Read it off the label, as C or A.");
        faults.range(
                "dischargeRating",
                "discharge rating",
                dischargeRatingAmps,
                TradeUnit.AMPERE,
                0.01,
                10_000,
                "Read it off the label, as C or A.");
        faults.range("mass", "mass", massKilograms, TradeUnit.GRAM, 1, 50_000, "Weigh the pack with its leads.");
        faults.refuse();
    }

    /** Rated energy [J]: rated capacity × nominal volts per cell × cells in series (49 CFR 171.8, watt-hour). */
    public double ratedEnergyJoules() {
        return ratedCapacityCoulombs * chemistry.nominalVolts() * cellsInSeries;
    }

    /** The current of a C rating on this pack [A]: C × capacity per hour. */
    public double ampsOfRate(double perHour) {
        return perHour * TradeUnit.AMPERE_HOUR.fromSi(ratedCapacityCoulombs);
    }

    /** {@code 4S}, {@code 6S2P}. */
    public String arrangement() {
        return cellsInSeries + "S" + (cellsInParallel > 1 ? cellsInParallel + "P" : "");
    }
}
