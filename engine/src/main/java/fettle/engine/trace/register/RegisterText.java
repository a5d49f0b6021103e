package fettle.engine.trace.register;

import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Decodes raw register words into what they say. Checked against worked decodes in its test. */
public final class RegisterText {
    private static final int WORD = 0xFFFF;
    private static final int SIGN = 0x8000;
    private static final double TENTHS_OF_KELVIN = 0.1;
    private static final int MILLIWATT_HOURS_A_COUNT = 10;
    private static final int FIRST_FLAG = 4;
    private static final int FIRST_YEAR = 1980;

    /** Status bits from bit 4 up; blank where the specification reserves the bit. */
    private static final List<String> STATUS = List.of(
            "FULLY_DISCHARGED",
            "FULLY_CHARGED",
            "DISCHARGING",
            "INITIALIZED",
            "REMAINING_TIME_ALARM",
            "REMAINING_CAPACITY_ALARM",
            "",
            "TERMINATE_DISCHARGE_ALARM",
            "OVER_TEMP_ALARM",
            "",
            "TERMINATE_CHARGE_ALARM",
            "OVER_CHARGED_ALARM");

    private RegisterText() {}

    /**
     * What a word says, e.g. {@code 12.600 V}, {@code -5000 mA}, {@code not discharging}.
     *
     * @param raw 0 … 65535
     */
    public static String of(Register register, int raw, Scaling scaling) {
        return switch (register.packing()) {
            case NUMBER -> Integer.toString(raw);
            case CAPACITY -> capacity(raw, scaling);
            case RATE ->
                signed(raw) * scaling.currentFactor()
                        + (scaling.capacity() == Scaling.Capacity.CHARGE ? " mA" : " x 10 mW");
            case MINUTES -> raw + " min";
            case MINUTES_TO_EMPTY -> raw == WORD ? "not discharging" : raw + " min";
            case MINUTES_TO_FULL -> raw == WORD ? "not charging" : raw + " min";
            case MODE ->
                String.format(Locale.ROOT, "0x%04X, capacities in %s", raw, (raw & SIGN) == 0 ? "mAh" : "10 mWh");
            case TEMPERATURE -> TradeUnit.CELSIUS.print(kelvins(raw), 2);
            case VOLTAGE -> TradeUnit.VOLT.print(volts(raw, scaling), 3);
            case CURRENT -> signed(raw) * scaling.currentFactor() + " mA";
            case ASKED_CURRENT -> raw == WORD ? "constant voltage" : raw + " mA";
            case ASKED_VOLTAGE ->
                raw == WORD ? "constant current" : TradeUnit.VOLT.print(TradeUnit.MILLIVOLT.toSi(raw), 3);
            case PERCENT -> raw + " %";
            case STATUS -> status(raw);
            case CYCLES -> raw + " cycles";
            case SPECIFICATION -> specification(raw);
            case DATE -> date(raw);
        };
    }

    /** Volts of a voltage register [V]. */
    public static double volts(int raw, Scaling scaling) {
        return TradeUnit.MILLIVOLT.toSi((double) raw * scaling.voltageFactor());
    }

    /** Current of a current register [A], turned to discharge positive. */
    public static double dischargeAmps(int raw, Scaling scaling) {
        return 0.0 - TradeUnit.MILLIAMPERE.toSi((double) signed(raw) * scaling.currentFactor());
    }

    /** Temperature of the temperature register [K]. */
    public static double kelvins(int raw) {
        return raw * TENTHS_OF_KELVIN;
    }

    private static int signed(int raw) {
        return (short) raw;
    }

    private static String capacity(int raw, Scaling scaling) {
        long scaled = (long) raw * scaling.currentFactor();
        if (scaling.capacity() == Scaling.Capacity.CHARGE) {
            return scaled + " mAh";
        }
        long milliwattHours = scaled * MILLIWATT_HOURS_A_COUNT;
        return String.format(Locale.ROOT, "%d mWh = %.2f Wh", milliwattHours, milliwattHours / 1000.0);
    }

    private static String status(int raw) {
        List<String> set = new ArrayList<>();
        for (int i = 0; i < STATUS.size(); i++) {
            if ((raw >> (FIRST_FLAG + i) & 1) == 1 && !STATUS.get(i).isEmpty()) {
                set.add(STATUS.get(i));
            }
        }
        return String.join("|", set) + (set.isEmpty() ? "" : " ") + "error=" + (raw & 0xF);
    }

    private static String specification(int raw) {
        return "revision=" + (raw & 0xF) + " version=" + (raw >> 4 & 0xF) + " vscale=10^" + (raw >> 8 & 0xF)
                + " ipscale=10^" + (raw >> 12 & 0xF);
    }

    /** Day bits 0-4, month bits 5-8, year since 1980 bits 9-15; shown as written even where no such day is. */
    private static String date(int raw) {
        return String.format(Locale.ROOT, "%04d-%02d-%02d", FIRST_YEAR + (raw >> 9), raw >> 5 & 0xF, raw & 0x1F);
    }
}
