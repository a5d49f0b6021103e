package fettle.engine.health.identification;

import fettle.engine.reference.ReferenceFiles;
import fettle.engine.trace.Trace;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The pulses of the measured cell one by one, beside the timed tables that came with them. */
final class MeasuredPulses {
    /** A window that ends at load-off. */
    static final double LOAD_ONLY = 0;

    /** Seconds of rest after the load in the same window. */
    static final double WITH_RECOVERY = 50;

    private final SlowCurve slow;

    MeasuredPulses(SlowCurve slow) {
        this.slow = slow;
    }

    /** Pulses of all currents at mid charge: at the ends charge itself moves resistance within a pulse. */
    TemperatureLaw lawOfMidCharge() {
        return law(0.28, 1.8, 0, 100);
    }

    /** The law through pulses both files have, of a range of charges taken out [Ah] and of currents [A]. */
    TemperatureLaw law(double fromAmpereHours, double toAmpereHours, double fromAmps, double toAmps) {
        Map<String, List<TemperatureLaw.Reading>> groups = new LinkedHashMap<>();
        for (String file : List.of("hppc_25C", "hppc_0C")) {
            Trace trace = MeasuredCell.trace(file);
            for (String[] pulse : ReferenceFiles.rows(MeasuredCell.FOLDER + file + "_pulses_timed.csv")) {
                double amps = Double.parseDouble(pulse[2]);
                double removed = Double.parseDouble(pulse[3]);
                boolean asked = removed >= fromAmpereHours && removed <= toAmpereHours;
                if (asked && amps >= fromAmps && amps <= toAmps) {
                    String key =
                            String.format(Locale.ROOT, "%.2f Ah, %.1f A", 0.001 + Double.parseDouble(pulse[3]), amps);
                    List<TemperatureLaw.Reading> group = groups.computeIfAbsent(key, fresh -> new ArrayList<>());
                    double kelvins = TradeUnit.CELSIUS.toSi(Double.parseDouble(pulse[4]));
                    double ohms = pulse(trace, pulse, LOAD_ONLY).stepOhms(1);
                    group.add(new TemperatureLaw.Reading(key.hashCode(), kelvins, ohms));
                }
            }
        }
        return TemperatureLaw.through(groups.values().stream()
                .filter(group -> group.size() == 2)
                .flatMap(List::stream)
                .toList());
    }

    List<Double> errors(String name, double recoverySeconds) {
        Trace trace = MeasuredCell.trace(name);
        List<Double> errors = new ArrayList<>();
        for (String[] pulse : ReferenceFiles.rows(MeasuredCell.FOLDER + name + "_pulses_timed.csv")) {
            IdentifiedCircuit found = pulse(trace, pulse, recoverySeconds);
            double slope = slow.curve().slopeVolts(found.startCharge().value()) / MeasuredCell.CAPACITY_COULOMBS;
            double[] seconds = {0.5, 1, Double.parseDouble(pulse[10])};
            int[] column = {11, 12, 14};
            for (int k = 0; k < seconds.length; k++) {
                double drop = found.stepOhms(seconds[k]) + slope * seconds[k];
                errors.add(Math.abs(drop / (1e-3 * Double.parseDouble(pulse[column[k]])) - 1));
            }
        }
        return errors;
    }

    private IdentifiedCircuit pulse(Trace trace, String[] pulse, double recoverySeconds) {
        double on = Double.parseDouble(pulse[1]);
        double end = on + Double.parseDouble(pulse[10]) + recoverySeconds;
        int from = 0;
        while (trace.timeSeconds()[from] < on - 10) {
            from++;
        }
        int to = from;
        while (to < trace.size() && trace.timeSeconds()[to] < end) {
            to++;
        }
        CellBelief belief = CellBelief.of(
                slow.curve(),
                Double.parseDouble(pulse[5]),
                0.005,
                new Estimate(MeasuredCell.CAPACITY_COULOMBS, 0.05 * MeasuredCell.CAPACITY_COULOMBS, List.of()));
        return Identification.of(MeasuredCell.window(trace, from, to), belief, PairCount.TWO);
    }

    static LoadWindow whole(Trace trace) {
        return MeasuredCell.window(trace, 0, trace.size());
    }

    static double rmsVolts(IdentifiedCell cell, Trace trace, double start, double leastCharge) {
        LoadWindow window = whole(trace);
        double[] volts = cell.volts(window, trace.temperatureKelvins(), start);
        double counted = 0;
        double squares = 0;
        int rows = 0;
        for (int row = 1; row < volts.length; row++) {
            double step = window.seconds(row) - window.seconds(row - 1);
            counted += 0.5 * (window.amps(row) + window.amps(row - 1)) * step;
            if (start - counted / MeasuredCell.CAPACITY_COULOMBS > leastCharge) {
                squares += (volts[row] - window.volts(row)) * (volts[row] - window.volts(row));
                rows++;
            }
        }
        return Math.sqrt(squares / rows);
    }

    static double share(List<Double> errors, double within) {
        return errors.stream().filter(error -> error <= within).count() / (double) errors.size();
    }

    static double median(List<Double> errors) {
        return errors.stream().sorted().skip(errors.size() / 2).findFirst().orElseThrow();
    }
}
