package fettle.engine.health.forecast;

/**
 * Capacity lost on the shelf, by published models of tested cells. None was fitted to hobby packs; they differ by a factor of 3.
 *
 * <p>Holds for 5 to 55 °C, months to a few years. Leaves out: fade by use.
 */
public enum ShelfFade {
    /**
     * NMC 18650: loss = (7.543 V − 23.75)·10⁶·exp(−6976/T)·d^0.75.
     *
     * @see "J. Schmalstieg et al., J. Power Sources 257 (2014) 325; parameters as in BLAST-Lite"
     */
    NMC_18650 {
        @Override
        public double lossShare(double days, double kelvins, double charge, double restVolts) {
            return (7.543 * restVolts - 23.75) * 1e6 * Math.exp(-6976 / kelvins) * Math.pow(days, 0.75);
        }
    },
    /**
     * NCA 18650: loss = 75.4·exp(−3340/T)·exp(353 z/T)·d^0.512.
     *
     * @see "P. Keil et al., J. Electrochem. Soc. 163 (2016) A1872; parameters as in BLAST-Lite"
     */
    NCA_18650 {
        @Override
        public double lossShare(double days, double kelvins, double charge, double restVolts) {
            return 75.4 * Math.exp(-3340 / kelvins) * Math.exp(353 * charge / kelvins) * Math.pow(days, 0.512);
        }
    };

    /**
     * Capacity lost, as a share of new.
     *
     * @param days on the shelf, ≥ 0
     * @param kelvins temperature there [K]
     * @param charge state of charge there, 0 … 1
     * @param restVolts rest volts per cell there [V]
     */
    public abstract double lossShare(double days, double kelvins, double charge, double restVolts);
}
