package fettle.engine.supply.field;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * A battery that feeds chargers in the field.
 *
 * @param chemistry its chemistry
 * @param cellsInSeries 1 … 24; a 12 V lead-acid battery has 6
 * @param ratedCoulombs capacity on its label [C]
 * @param ratedSeconds time of discharge for which that capacity is stated [s]; 20 h for most lead-acid
 * @param exponent Peukert's exponent, 1 … 1.6; 1 where capacity does not depend on the current
 * @param ohms inner resistance with leads [Ω], ≥ 0
 * @param charge its charge now, a fraction 0 … 1
 * @param reserve charge kept back, a fraction
 */
public record FieldBattery(
        Chemistry chemistry,
        int cellsInSeries,
        double ratedCoulombs,
        double ratedSeconds,
        double exponent,
        double ohms,
        Estimate charge,
        double reserve) {
    private static final double LEAD_ACID_EXPONENT = 1.25; // handbook of a battery monitor: typical of many batteries
    private static final double NIMH_EXPONENT = 1.05; // from memory
    private static final int MOST_CELLS = 24;
    private static final double MOST_EXPONENT = 1.6;

    public FieldBattery {
        Faults faults = new Faults();
        if (cellsInSeries < 1 || cellsInSeries > MOST_CELLS) {
            faults.add("cells", "cells in series are " + cellsInSeries + "; expected 1 to 24. 12 V lead-acid has 6.");
        }
        if (!(exponent >= 1 && exponent <= MOST_EXPONENT)) {
            faults.add(
                    "exponent",
                    "Peukert's exponent is " + exponent + "; expected 1 to 1.6. Lead-acid has about 1.1 to 1.4.");
        }
        faults.range(
                "capacity", "capacity", ratedCoulombs, TradeUnit.AMPERE_HOUR, 0.1, 2000, "Read the Ah off the label.");
        faults.range(
                "hours", "time of the rated discharge", ratedSeconds, TradeUnit.HOUR, 0.5, 300, "Often 20 h or 5 h.");
        faults.range("resistance", "inner resistance", ohms, TradeUnit.MILLIOHM, 0, 1000, "Give it in mΩ.");
        faults.range("charge", "charge", charge.value(), TradeUnit.PERCENT, 0, 100, "Give it in %.");
        faults.range("reserve", "reserve", reserve, TradeUnit.PERCENT, 0, 95, "50 % spares a lead-acid battery.");
        faults.refuse();
    }

    /** The exponent taken where none is known. */
    public static double usualExponent(Chemistry chemistry) {
        return switch (chemistry) {
            case LEAD_ACID -> LEAD_ACID_EXPONENT;
            case NIMH -> NIMH_EXPONENT;
            case LIPO, LIHV, LIFEPO4, LI_ION -> 1;
        };
    }

    /**
     * Peukert's exponent from two discharges from full to empty.
     *
     * <p>Formula: k = (ln t₂ − ln t₁) / (ln I₁ − ln I₂)
     *
     * @param amps current of the first [A]
     * @param seconds its time [s]
     * @param otherAmps current of the second [A], another
     * @param otherSeconds its time [s]
     */
    public static double exponent(double amps, double seconds, double otherAmps, double otherSeconds) {
        return (Math.log(otherSeconds) - Math.log(seconds)) / (Math.log(amps) - Math.log(otherAmps));
    }

    /** Current for which the capacity is stated [A]. */
    public double ratedAmps() {
        return ratedCoulombs / ratedSeconds;
    }

    /**
     * Rated charge used up a second at a current [C/s].
     *
     * <p>Formula (Peukert 1897): I · (I / I_rated)^(k−1); below the rated current I itself, so that a gentle load is never
     * credited with more than the label.
     */
    public double usedPerSecond(double amps) {
        return amps * Math.max(1, Math.pow(amps / ratedAmps(), exponent - 1));
    }

    /** Time from full to empty at a constant current [s]; H · (C / (I·H))^k above the rated current. */
    public double secondsFromFull(double amps) {
        return ratedCoulombs / usedPerSecond(amps);
    }

    /** Volts at rest with a charge [V], by the chemistry's curve. */
    public double restVolts(double chargeFraction) {
        return cellsInSeries * DefaultCurves.of(chemistry).volts(chargeFraction);
    }

    /** Charge at rest volts of the whole battery, a fraction 0 … 1, with the spread between batteries. */
    public static Estimate chargeAtRest(Chemistry chemistry, int cellsInSeries, double restVolts) {
        RestCurve curve = DefaultCurves.of(chemistry);
        double charge = Math.max(0, Math.min(1, curve.charge(restVolts / cellsInSeries)));
        double deviation = curve.bandVolts(charge) / curve.slopeVolts(charge);
        return Estimate.ofIndependent(charge, List.of(new Driver("rest volts of other batteries", deviation)));
    }

    FieldBattery with(double capacityFactor, double otherExponent, double otherCharge) {
        return new FieldBattery(
                chemistry,
                cellsInSeries,
                ratedCoulombs * capacityFactor,
                ratedSeconds,
                otherExponent,
                ohms,
                new Estimate(otherCharge, 0, List.of()),
                reserve);
    }
}
