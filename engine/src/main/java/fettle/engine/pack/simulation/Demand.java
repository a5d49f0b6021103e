package fettle.engine.pack.simulation;

/**
 * What is asked of the packs at their common terminals during a protocol step. Discharge is positive.
 *
 * <p>Each kind answers with the current for a source of given electromotive force and resistance, in closed form.
 */
public sealed interface Demand {
    /**
     * Current [A] drawn from a source.
     *
     * @param emfVolts electromotive force [V]
     * @param ohms its resistance [Ω], ≥ 0
     * @return the current; NaN if the source cannot deliver it
     */
    double amps(double emfVolts, double ohms);

    /** Which of its limits holds for that source; a change within a step is located like an end condition. */
    default Limit limit(double emfVolts, double ohms) {
        return Limit.NONE;
    }

    /** The limits of a demand. */
    enum Limit {
        NONE("its one value"),
        CURRENT("the current limit"),
        POWER("the power limit"),
        VOLTS("the voltage limit"),
        NOTHING_WANTED("no charge is taken");

        private final String label;

        Limit(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Nothing connected. */
    record Rest() implements Demand {
        @Override
        public double amps(double emfVolts, double ohms) {
            return 0;
        }
    }

    /**
     * A constant current.
     *
     * @param dischargeAmps current [A], negative charges
     */
    record Current(double dischargeAmps) implements Demand {
        @Override
        public double amps(double emfVolts, double ohms) {
            return dischargeAmps;
        }
    }

    /**
     * A constant power at the terminals.
     *
     * @param dischargeWatts power [W], negative charges
     */
    record Power(double dischargeWatts) implements Demand {
        @Override
        public double amps(double emfVolts, double ohms) {
            double root = Math.sqrt(emfVolts * emfVolts - 4 * ohms * dischargeWatts);
            return 2 * dischargeWatts / (emfVolts + root);
        }
    }

    /**
     * A resistor across the terminals.
     *
     * @param loadOhms its resistance [Ω], > 0
     */
    record Resistor(double loadOhms) implements Demand {
        @Override
        public double amps(double emfVolts, double ohms) {
            return emfVolts / (ohms + loadOhms);
        }
    }

    /**
     * A charging source: constant current, constant power, then constant voltage, whichever is least. Takes nothing back.
     *
     * @param limitVolts voltage limit at the source [V], > 0
     * @param limitAmps current limit [A], > 0
     * @param limitWatts power limit at the terminals [W], > 0; infinite for none
     * @param sourceOhms resistance between the source and the terminals [Ω], ≥ 0
     */
    record Charge(double limitVolts, double limitAmps, double limitWatts, double sourceOhms) implements Demand {
        @Override
        public double amps(double emfVolts, double ohms) {
            double byVolts = byVolts(emfVolts, ohms);
            return byVolts <= 0 ? 0 : -Math.min(byVolts, Math.min(limitAmps, byPower(emfVolts, ohms)));
        }

        @Override
        public Limit limit(double emfVolts, double ohms) {
            double byVolts = byVolts(emfVolts, ohms);
            double byPower = byPower(emfVolts, ohms);
            if (byVolts <= 0) {
                return Limit.NOTHING_WANTED;
            }
            if (byVolts <= Math.min(limitAmps, byPower)) {
                return Limit.VOLTS;
            }
            return byPower < limitAmps ? Limit.POWER : Limit.CURRENT;
        }

        private double byVolts(double emfVolts, double ohms) {
            double total = ohms + sourceOhms;
            double headroom = limitVolts - emfVolts;
            return headroom <= 0 ? 0 : headroom / total;
        }

        private double byPower(double emfVolts, double ohms) {
            if (Double.isInfinite(limitWatts)) {
                return Double.POSITIVE_INFINITY;
            }
            double root = Math.sqrt(emfVolts * emfVolts + 4 * ohms * limitWatts);
            return 2 * limitWatts / (emfVolts + root);
        }
    }
}
