package fettle.engine.trace;

import static fettle.engine.trace.MeasuredTraces.Sign.DISCHARGE_NEGATIVE;
import static fettle.engine.trace.MeasuredTraces.Sign.DISCHARGE_POSITIVE;

import fettle.engine.trace.MeasuredTraces.Sign;
import java.util.Locale;

/** Prints the table of counting in {@code docs/accuracy.md}; {@link CountingAgainstOpenDataTest} holds its figures. */
final class CountingTable {
    private static final double SECONDS_PER_HOUR = 3600;

    private CountingTable() {}

    public static void main(String[] arguments) {
        System.out.println("| record | stated Ah | counted Ah | off | stated Wh | counted Wh | off |");
        System.out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
        row("battery/panasonic-18650pf/dis1C_25C.csv.gz", DISCHARGE_NEGATIVE, 2.8023, 9.831);
        row("battery/panasonic-18650pf/us06_25C.csv.gz", DISCHARGE_NEGATIVE, 2.5863, 8.863);
        row("battery/panasonic-18650pf/mixed1_25C.csv.gz", DISCHARGE_NEGATIVE, 2.6966, 9.420);
        row("battery/pouch-discharge/lco2p28_0p1C.csv", DISCHARGE_POSITIVE, 2.3355, 8.912);
        row("battery/pouch-discharge/lco2p28_0p5C.csv", DISCHARGE_POSITIVE, 2.3133, 8.667);
        row("battery/pouch-discharge/lco2p28_1C.csv", DISCHARGE_POSITIVE, 2.2868, 8.399);
    }

    private static void row(String file, Sign sign, double ampereHours, double wattHours) {
        Count count = Counting.of(MeasuredTraces.read(file, sign));
        double charge = count.netCoulombs() / SECONDS_PER_HOUR;
        double energy = count.netJoules() / SECONDS_PER_HOUR;
        System.out.printf(
                Locale.ROOT,
                "| %s | %.4f | %.4f | %+.3f %% | %.3f | %.3f | %+.3f %% |%n",
                file.replaceAll(".*/|\\.csv.*", ""),
                ampereHours,
                charge,
                100 * (charge / ampereHours - 1),
                wattHours,
                energy,
                100 * (energy / wattHours - 1));
    }
}
