package fettle.engine.units;

import java.util.Locale;

/**
 * The units people of the trade write, each with its factor to SI.
 *
 * <p>Formula: si = trade · factor + offset. Factors: NIST SP 811 (2008) Appendix B.8; those of time, charge and
 * temperature are exact by definition.
 */
public enum TradeUnit {
    MILLIAMPERE_HOUR("mAh", 3.6, 0),
    AMPERE_HOUR("Ah", 3600, 0),
    WATT_HOUR("Wh", 3600, 0),
    VOLT("V", 1, 0),
    MILLIVOLT("mV", 1e-3, 0),
    AMPERE("A", 1, 0),
    MILLIAMPERE("mA", 1e-3, 0),
    WATT("W", 1, 0),
    C_RATE("C", 1, 0),
    MILLIOHM("mΩ", 1e-3, 0),
    OHM("Ω", 1, 0),
    CELSIUS("°C", 1, 273.15),
    FAHRENHEIT("°F", 5.0 / 9.0, 273.15 - 32 * 5.0 / 9.0),
    SECOND("s", 1, 0),
    MINUTE("min", 60, 0),
    HOUR("h", 3600, 0),
    DAY("d", 86_400, 0),
    PERCENT("%", 0.01, 0),
    GRAM("g", 1e-3, 0),
    KILOGRAM("kg", 1, 0),
    OUNCE("oz", 0.028349523125, 0),
    MICROSECOND("µs", 1e-6, 0),
    HERTZ("Hz", 1, 0),
    DEGREE("°", Math.PI / 180, 0),
    MILLIMETRE("mm", 1e-3, 0),
    INCH("in", 0.0254, 0),
    METRE("m", 1, 0),
    FOOT("ft", 0.3048, 0),
    METRE_PER_SECOND("m/s", 1, 0),
    KILOMETRE_PER_HOUR("km/h", 1 / 3.6, 0),
    MILE_PER_HOUR("mph", 0.44704, 0),
    KNOT("kn", 1852.0 / 3600, 0),
    KILOGRAM_FORCE_CENTIMETRE("kg·cm", 0.0980665, 0),
    OUNCE_FORCE_INCH("oz·in", 0.00706155181422604375, 0),
    NEWTON_METRE("N·m", 1, 0);

    private static final int MOST_ADDED_DECIMALS = 2;
    private static final double WHOLE = 1e-12;

    private final String symbol;
    private final double factor;
    private final double offset;

    /** How many of it make the SI unit, where that is a whole number above 1; else 0. */
    private final double divisor;

    TradeUnit(String symbol, double factor, double offset) {
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
        double many = Math.rint(1 / factor);
        this.divisor = Math.abs(1 / factor - many) < WHOLE * many ? many : 0;
    }

    /** The symbol as printed behind a figure. */
    public String symbol() {
        return symbol;
    }

    /** A value in this unit, as SI. */
    public double toSi(double value) {
        // a decimal prefix divides exactly rounded, so that 3800 mV is 3.8 V and not the next double
        double scaled = divisor > 1 ? value / divisor : value * factor;
        return scaled + offset;
    }

    /** An SI value, in this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** A difference in SI (no offset), in this unit: for ± and for temperature rises. */
    public double differenceFromSi(double si) {
        return si / factor;
    }

    /** An SI value printed in this unit with a fixed number of decimals, e.g. {@code 3.840 V}. */
    public String print(double si, int decimals) {
        return figure(fromSi(si), decimals) + behind();
    }

    /**
     * An estimate printed in this unit as value ± standard deviation; with more decimals than asked where the ± would
     * otherwise read as none at all.
     */
    public String print(Estimate estimate, int decimals) {
        double deviation = differenceFromSi(estimate.standardDeviation());
        int shown = decimals;
        while (deviation > 0 && shown < decimals + MOST_ADDED_DECIMALS && deviation < 0.5 * Math.pow(10, -shown)) {
            shown++;
        }
        return figure(fromSi(estimate.value()), shown) + " ± " + figure(deviation, shown) + behind();
    }

    /** The symbol with its space; degrees of angle have none (ISO 80000-1). */
    private String behind() {
        return this == DEGREE ? symbol : " " + symbol;
    }

    private static String figure(double value, int decimals) {
        String printed = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return printed.matches("-0(\\.0*)?") ? printed.substring(1) : printed;
    }
}
