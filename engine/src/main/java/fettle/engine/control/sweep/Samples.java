package fettle.engine.control.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Pulses [s], rising, with the current at each [A]; several readings may share a pulse. */
record Samples(double[] pulses, double[] amps) {
    record Sample(double pulseSeconds, double amps) {}

    static Samples of(List<Sample> unsorted) {
        List<Sample> rising = unsorted.stream()
                .sorted(Comparator.comparingDouble(Sample::pulseSeconds))
                .toList();
        return new Samples(
                rising.stream().mapToDouble(Sample::pulseSeconds).toArray(),
                rising.stream().mapToDouble(Sample::amps).toArray());
    }

    int size() {
        return pulses.length;
    }

    Samples range(int from, int to) {
        return new Samples(Arrays.copyOfRange(pulses, from, to), Arrays.copyOfRange(amps, from, to));
    }

    /** Seen from the other side: pulses negated, so that outwards is rising again. */
    Samples mirrored() {
        double[] pulsesBack = new double[size()];
        double[] ampsBack = new double[size()];
        for (int at = 0; at < size(); at++) {
            pulsesBack[at] = -pulses[size() - 1 - at];
            ampsBack[at] = amps[size() - 1 - at];
        }
        return new Samples(pulsesBack, ampsBack);
    }

    /** Current smoothed by the median of an odd number of neighbours [A]; fewer at the ends. */
    double[] smoothed(int width) {
        double[] smooth = new double[size()];
        for (int at = 0; at < size(); at++) {
            int reach = Math.min(width / 2, Math.min(at, size() - 1 - at));
            smooth[at] = median(Arrays.copyOfRange(amps, at - reach, at + reach + 1));
        }
        return smooth;
    }

    /** No more than about so many, each the median of its neighbours; itself where it is short enough. */
    Samples thinned(int most) {
        if (size() <= most) {
            return this;
        }
        int together = (size() + most - 1) / most;
        List<Sample> thinned = new ArrayList<>();
        for (int at = 0; at < size(); at += together) {
            int end = Math.min(size(), at + together);
            thinned.add(
                    new Sample(median(Arrays.copyOfRange(pulses, at, end)), median(Arrays.copyOfRange(amps, at, end))));
        }
        return of(thinned);
    }

    /** Usual distance between neighbouring pulses [s]. */
    double stepSeconds() {
        double[] distinct = Arrays.stream(pulses).distinct().toArray();
        double[] steps = new double[distinct.length - 1];
        for (int at = 0; at < steps.length; at++) {
            steps[at] = distinct[at + 1] - distinct[at];
        }
        return median(steps);
    }

    static double median(double[] values) {
        double[] rising = values.clone();
        Arrays.sort(rising);
        int middle = rising.length / 2;
        return rising.length % 2 == 1 ? rising[middle] : (rising[middle - 1] + rising[middle]) / 2;
    }
}
