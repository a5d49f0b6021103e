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
    },
    /**
     * NMC pouch of 75 Ah: loss = 2.66·10⁷·exp(−17.8/Tn)·exp(−5.21 Un/Tn)·d^0.357, Tn = T/308.15 K, Un = Ua/0.123 V, Ua the volts of
     * graphite at that charge, straight between the four published.
     *
     * @see "K. Smith et al., American Control Conference 2017; parameters as in BLAST-Lite"
     */
    NMC_POUCH {
        private static final double[] CHARGE = {0.3, 0.5, 0.8, 1.0};
        private static final double[] GRAPHITE_VOLTS = {0.1489, 0.1233, 0.0943, 0.0864};

        @Override
        public double lossShare(double days, double kelvins, double charge, double restVolts) {
            double relative = kelvins / 308.15;
            double graphite = graphiteVolts(charge) / 0.123;
            return 2.66e7 * Math.exp(-17.8 / relative) * Math.exp(-5.21 * graphite / relative) * Math.pow(days, 0.357);
        }

        private double graphiteVolts(double charge) {
            int at = 0;
            while (at < CHARGE.length - 2 && charge > CHARGE[at + 1]) {
                at++;
            }
            double share = Math.max(0, Math.min(1, (charge - CHARGE[at]) / (CHARGE[at + 1] - CHARGE[at])));
            return GRAPHITE_VOLTS[at] + share * (GRAPHITE_VOLTS[at + 1] - GRAPHITE_VOLTS[at]);
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
