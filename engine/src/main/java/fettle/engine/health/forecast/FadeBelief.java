package fettle.engine.health.forecast;

/**
 * What is believed of fading before a pack has shown any, as shares of new.
 *
 * @param perCycle fade in a full cycle
 * @param perCycleDeviation its standard deviation
 * @param perCycleDrift how fade itself wanders in a cycle, standard deviation
 * @param wander how health wanders in a cycle beyond fade, standard deviation
 * @param reading scatter of a reading beyond its own ±, standard deviation
 * @param recovery what a rest of days gives back for a while, standard deviation
 * @param recoveryStays share of a recovery left after a cycle
 * @param perDay fade in a day on the shelf
 */
public record FadeBelief(
        double perCycle,
        double perCycleDeviation,
        double perCycleDrift,
        double wander,
        double reading,
        double recovery,
        double recoveryStays,
        double perDay) {
    /**
     * Small lithium cells; what is from where, and how far the cells it is tested with had a say, is in docs/accuracy.md.
     *
     * <p>Fade 0.12 ± 0.15 % a cycle spans 130 cycles to a thousand and more to 80 %. Drift of fade 8e-5: losses that grow as the root of
     * cycles, as published models of storage do (powers 0.36 to 0.75), halve their fade between a quarter and all of 130 cycles.
     * Reading 0.55 %: between repeats of a 33 Ah pouch (Wiggins et al., Zenodo 2580327: 0.1 %) and of an 18650 day by day
     * (Kollmeyer 2018: 3 %). Recovery 2.6 %: first over second of two discharges after a break, 1.7 and 3.3 % (Kollmeyer 2018).
     * Wander, half of a reading's scatter, and what stays of a recovery: no source. On the shelf 3 % a year at 25 °C and storage volts
     * (Schmalstieg et al., J. Power Sources 257 (2014) 325).
     */
    public static final FadeBelief LITHIUM =
            new FadeBelief(0.0012, 0.0015, 8e-5, 0.0028, 0.0055, 0.026, 0.9, 0.0305 / 365);

    /**
     * Resistance of small lithium cells. From memory but for the shelf, 6.3 % a year at 25 °C and 3.85 V (Schmalstieg et al., J.
     * Power Sources 257 (2014) 325); wide, so that a few readings lead.
     */
    public static final FadeBelief RESISTANCE = new FadeBelief(0.003, 0.006, 3e-4, 0.004, 0.02, 0.02, 0.9, 0.063 / 365);
}
