package fettle.engine.health.identification;

import fettle.engine.cell.RestCurve;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.trace.MeasuredTraces;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import fettle.engine.working.Citation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The measured 18650PF cell: P. Kollmeyer, Mendeley Data, v1, 2018, doi:10.17632/wykht8y7tg.1, read in place. Pulses and the
 * C/20 discharge are what parameters come from; the drive profiles are never looked at for them.
 */
public final class MeasuredCell {
    static final String FOLDER = "battery/panasonic-18650pf/";
    private static final Citation SOURCE = Citation.published("Kollmeyer 2018, C/20 discharge at 25 °C");
    private static final double SETTLED_OHMS = 0.045; // 9.9 s pulse value of the timed table, mid charge
    /** From rest volts between pulse groups by total least squares; see CapacityAgainstOpenDataTest. */
    static final double CAPACITY_COULOMBS = 3600 * 2.88;

    private static final double GAP_SECONDS = 100;

    private MeasuredCell() {}

    public static Trace trace(String name) {
        return MeasuredTraces.read(FOLDER + name + ".csv.gz", MeasuredTraces.Sign.DISCHARGE_NEGATIVE);
    }

    /** The slow curve: from the last rest before the C/20 discharge to its lowest volts. */
    static SlowCurve slowCurve() {
        Trace slow = trace("c20_25C");
        int from = 0;
        while (slow.currentAmps()[from + 1] < 0.05) {
            from++;
        }
        int to = from + 1;
        while (slow.currentAmps()[to + 1] > 0.05) {
            to++;
        }
        return SlowCurve.of(window(slow, from, to + 1), SETTLED_OHMS, SOURCE);
    }

    static LoadWindow window(Trace trace, int from, int to) {
        Trace part = trace.part(from, to);
        return LoadWindow.of(
                part.timeSeconds(),
                part.currentAmps(),
                part.packVolts(),
                Arrays.stream(part.temperatureKelvins()).average().orElseThrow());
    }

    /** One group of pulses. */
    record Group(double removedCoulombs, LoadWindow window) {}

    /** Groups of at least two pulses, as the gaps of the file part them. */
    static List<Group> groups(String name) {
        Trace trace = trace(name);
        List<String[]> pulses = ReferenceFiles.rows(FOLDER + name + "_pulses_timed.csv");
        List<Group> groups = new ArrayList<>();
        int from = 0;
        for (int row = 1; row <= trace.size(); row++) {
            boolean ends = row == trace.size() || trace.timeSeconds()[row] - trace.timeSeconds()[row - 1] > GAP_SECONDS;
            if (ends) {
                double begin = trace.timeSeconds()[from];
                double end = trace.timeSeconds()[row - 1];
                List<String[]> inside = pulses.stream()
                        .filter(pulse -> Double.parseDouble(pulse[1]) >= begin && Double.parseDouble(pulse[1]) <= end)
                        .toList();
                if (inside.size() >= 2) {
                    groups.add(new Group(3600 * Double.parseDouble(inside.get(0)[3]), window(trace, from, row)));
                }
                from = row;
            }
        }
        return groups;
    }

    /** The cell from its slow curve and its pulses at 25 °C, with the usual temperature law. */
    public static IdentifiedCell fromPulses() {
        return identified("hppc_25C", slowCurve(), CAPACITY_COULOMBS, TemperatureLaw.USUAL);
    }

    /** The cell from its pulses at one temperature, resistances at 25 °C by the law. */
    static IdentifiedCell identified(String pulses, SlowCurve slow, double capacityCoulombs, TemperatureLaw law) {
        RestCurve curve = slow.curve();
        List<CellIdentification.Level> levels = groups(pulses).stream()
                .map(group -> new CellIdentification.Level(
                        group.window(),
                        CellBelief.of(
                                curve,
                                group.window().volts(0),
                                0.005,
                                new Estimate(capacityCoulombs, 0.3 * capacityCoulombs, List.of()))))
                .toList();
        return CellIdentification.of(levels, law);
    }
}
