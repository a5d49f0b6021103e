package fettle.engine.pack.simulation;

import fettle.engine.units.TradeUnit;

/** What may end a protocol step. */
public enum EndKind {
    AFTER("after_seconds", "time in the step", TradeUnit.SECOND) {
        @Override
        double excess(Moment now, double value) {
            return now.stepSeconds() - value;
        }
    },
    VOLTS_AT_MOST("volts_at_most", "terminal volts at most", TradeUnit.VOLT) {
        @Override
        double excess(Moment now, double value) {
            return value - now.volts();
        }
    },
    VOLTS_AT_LEAST("volts_at_least", "terminal volts at least", TradeUnit.VOLT) {
        @Override
        double excess(Moment now, double value) {
            return now.volts() - value;
        }
    },
    CELL_VOLTS_AT_MOST("cell_volts_at_most", "volts of any cell at most", TradeUnit.VOLT) {
        @Override
        double excess(Moment now, double value) {
            return value - now.lowestCellVolts();
        }
    },
    CELL_VOLTS_AT_LEAST("cell_volts_at_least", "volts of any cell at least", TradeUnit.VOLT) {
        @Override
        double excess(Moment now, double value) {
            return now.highestCellVolts() - value;
        }
    },
    CELL_SPREAD_AT_MOST("cell_spread_at_most_volts", "volts between highest and lowest cell at most", TradeUnit.VOLT) {
        @Override
        double excess(Moment now, double value) {
            return value - (now.highestCellVolts() - now.lowestCellVolts());
        }
    },
    CURRENT_AT_MOST("amps_at_most", "current either way at most", TradeUnit.AMPERE) {
        @Override
        double excess(Moment now, double value) {
            return value - Math.abs(now.amps());
        }
    },
    PACK_CURRENTS_AT_MOST("pack_amps_at_most", "current of every pack either way at most", TradeUnit.AMPERE) {
        @Override
        double excess(Moment now, double value) {
            double largest = 0;
            for (int pack = 0; pack < now.packs(); pack++) {
                largest = Math.max(largest, Math.abs(now.packAmps(pack)));
            }
            return value - largest;
        }
    },
    CHARGE_PASSED("passed_ah", "charge passed in the step", TradeUnit.AMPERE_HOUR) {
        @Override
        double excess(Moment now, double value) {
            return now.stepCoulombs() - value;
        }
    },
    CELL_CHARGE_AT_MOST("cell_charge_at_most", "charge of any cell at most", TradeUnit.PERCENT) {
        @Override
        double excess(Moment now, double value) {
            return value - now.lowestCellCharge();
        }
    },
    CELL_CHARGE_AT_LEAST("cell_charge_at_least", "charge of any cell at least", TradeUnit.PERCENT) {
        @Override
        double excess(Moment now, double value) {
            return now.highestCellCharge() - value;
        }
    },
    TEMPERATURE_AT_LEAST("celsius_at_least", "temperature of any cell at least", TradeUnit.CELSIUS) {
        @Override
        double excess(Moment now, double value) {
            return now.hottestKelvins() - value;
        }
    },
    TEMPERATURE_AT_MOST("celsius_at_most", "temperature of every cell at most", TradeUnit.CELSIUS) {
        @Override
        double excess(Moment now, double value) {
            return value - now.hottestKelvins();
        }
    };

    private final String key;
    private final String meaning;
    private final TradeUnit unit;

    EndKind(String key, String meaning, TradeUnit unit) {
        this.key = key;
        this.meaning = meaning;
        this.unit = unit;
    }

    /** How much the condition is exceeded by, SI; ≥ 0 when met. */
    abstract double excess(Moment now, double value);

    /** How scenario files name it. */
    public String key() {
        return key;
    }

    public String meaning() {
        return meaning;
    }

    /** The unit people state its value in. */
    public TradeUnit unit() {
        return unit;
    }
}
