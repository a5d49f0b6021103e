package fettle.engine.pack.model;

import fettle.engine.units.Faults;

/**
 * How far the figures of a pack may be off, each as one standard deviation.
 *
 * @param charge of the charge of all cells together, as a fraction of full, ≥ 0
 * @param capacityShare of the capacity, relative, ≥ 0
 * @param resistanceShare of all resistances, relative, ≥ 0
 * @param kelvins of the temperature of pack and surroundings [K], ≥ 0
 * @param curveBands of the rest-voltage curve, in bands of its chemistry, ≥ 0; 0 where only rest volts matter and those
 *     were read
 */
public record Doubt(double charge, double capacityShare, double resistanceShare, double kelvins, double curveBands) {
    /**
     * A pack checked at rest, its resistance noted by a meter: charge within 3 %, capacity 5 %, resistance 15 %,
     * temperature 2 K. Common practice, no source.
     */
    public static final Doubt USUAL = new Doubt(0.03, 0.05, 0.15, 2, 1);

    /** Nothing is uncertain: for comparisons. */
    public static final Doubt NONE = new Doubt(0, 0, 0, 0, 0);

    public Doubt {
        Faults faults = new Faults();
        share(faults, "charge_doubt", "± of the charge", charge);
        share(faults, "capacity_doubt", "± of the capacity", capacityShare);
        share(faults, "resistance_doubt", "± of the resistance", resistanceShare);
        if (!(kelvins >= 0 && kelvins <= 30)) {
            faults.add(
                    "temperature_doubt",
                    "± of the temperature is " + kelvins + " K; expected 0 to 30 K. Give one standard deviation.");
        }
        if (!(curveBands >= 0 && curveBands <= 3)) {
            faults.add("curve_doubt", "± of the curve is " + curveBands + " bands; expected 0 to 3.");
        }
        faults.refuse();
    }

    private static void share(Faults faults, String field, String what, double value) {
        if (!(value >= 0 && value <= 0.5)) {
            faults.add(field, what + " is " + 100 * value + " %; expected 0 to 50 %. Give one standard deviation.");
        }
    }
}
