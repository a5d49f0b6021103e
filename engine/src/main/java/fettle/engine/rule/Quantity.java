package fettle.engine.rule;

import fettle.engine.units.TradeUnit;

/** What a rule limits, in which unit it is written, and which direction is stricter. */
public enum Quantity {
    CHARGE_LIMIT("charge-limit", "charge limit per cell", TradeUnit.VOLT, Stricter.LOWER),
    STORAGE_LOW("storage-low", "lowest storage volts per cell", TradeUnit.VOLT, Stricter.HIGHER),
    STORAGE_HIGH("storage-high", "highest storage volts per cell", TradeUnit.VOLT, Stricter.LOWER),
    REST_MINIMUM("rest-minimum", "lowest rest volts per cell", TradeUnit.VOLT, Stricter.HIGHER),
    LOAD_MINIMUM("load-minimum", "lowest volts per cell under load", TradeUnit.VOLT, Stricter.HIGHER),
    CHARGE_COLDEST("charge-coldest", "lowest pack temperature for charging", TradeUnit.CELSIUS, Stricter.HIGHER),
    CHARGE_WARMEST("charge-warmest", "highest pack temperature for charging", TradeUnit.CELSIUS, Stricter.LOWER),
    TEMPERATURE_LIMIT("temperature-limit", "highest pack temperature in use", TradeUnit.CELSIUS, Stricter.LOWER),
    STORAGE_TIME("storage-time", "longest time kept full", TradeUnit.HOUR, Stricter.LOWER),
    IMBALANCE_TEND("imbalance-tend", "imbalance that wants balancing", TradeUnit.MILLIVOLT, Stricter.LOWER),
    IMBALANCE_GROUND("imbalance-ground", "imbalance that grounds the pack", TradeUnit.MILLIVOLT, Stricter.LOWER),
    RESERVE("reserve", "charge kept in reserve", TradeUnit.PERCENT, Stricter.HIGHER),
    DEFAULT_CHARGE_RATE(
            "default-charge-rate", "charge rate where no rating is known", TradeUnit.C_RATE, Stricter.LOWER),
    CHECK_AGE("check-age", "longest time a check is trusted", TradeUnit.DAY, Stricter.LOWER),
    RETIRE_CAPACITY("retire-capacity", "least capacity, share of new", TradeUnit.PERCENT, Stricter.HIGHER),
    RETIRE_RESISTANCE(
            "retire-resistance", "largest resistance, share of its first readings", TradeUnit.PERCENT, Stricter.LOWER);

    /** Which way a rule becomes stricter. */
    public enum Stricter {
        LOWER,
        HIGHER
    }

    private static final int MOST_DECIMALS = 4;

    private final String key;
    private final String meaning;
    private final TradeUnit unit;
    private final Stricter stricter;

    Quantity(String key, String meaning, TradeUnit unit, Stricter stricter) {
        this.key = key;
        this.meaning = meaning;
        this.unit = unit;
        this.stricter = stricter;
    }

    public String key() {
        return key;
    }

    public String meaning() {
        return meaning;
    }

    public TradeUnit unit() {
        return unit;
    }

    /** A limit in this quantity's unit, with as many decimals as it has: a limit is never shown rounded. */
    public String print(double limitSi) {
        double limit = unit.fromSi(limitSi);
        int decimals = unit == TradeUnit.VOLT ? 2 : 0;
        while (decimals < MOST_DECIMALS && isRounded(limit, decimals)) {
            decimals++;
        }
        return unit.print(limitSi, decimals);
    }

    private static boolean isRounded(double value, int decimals) {
        double shifted = value * Math.pow(10, decimals);
        return Math.abs(shifted - Math.rint(shifted)) > 1e-6;
    }

    /** True if {@code candidateSi} is looser than {@code presentSi}. */
    public boolean loosens(double candidateSi, double presentSi) {
        return stricter == Stricter.LOWER ? candidateSi > presentSi : candidateSi < presentSi;
    }
}
