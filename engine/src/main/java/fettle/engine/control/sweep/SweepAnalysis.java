package fettle.engine.control.sweep;

import fettle.engine.control.Caution;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Reads a sweep.
 *
 * <p>Order: split into passes; noise from neighbours; take spikes out; find the free middle; on either side of it two
 * straight lines that meet where binding begins; level, hot spots and angles from what lies between.
 * <p>Leaves out: what lies beyond the swept pulses; a side that did not bind may bind one step further.
 * <p>Accuracy: docs/accuracy.md, from generated sweeps.
 */
public final class SweepAnalysis {
    /** Kept from where binding begins, on top of twice its ± [s]: twice a usual step; Fettle's choice. */
    private static final double MARGIN = TradeUnit.MICROSECOND.toSi(20);

    private static final double DEVIATIONS = 2;
    private static final double DEVIATIONS_OF_MEDIAN = 1.2533; // of the mean, for a normal scatter
    private static final double QUARTILES = 1.349; // between the quartiles of a normal distribution
    private static final int SMOOTH = 5;

    /** Samples fitted at most; neighbours are put together beyond it, which leaves the ± on the wide side. */
    private static final int MOST = 10_000;

    private static final int END_READINGS = 3;

    private SweepAnalysis() {}

    public static SweepResult of(Sweep sweep) {
        List<Pass> passes = Pass.of(sweep);
        boolean held = held(passes);
        List<Samples> readings = passes.stream().map(pass -> pass.samples(held)).toList();
        double noise = Noise.amps(readings);
        Samples pooled = pooled(sweep, readings, noise);
        int middle = middle(pooled, noise);
        Binding low = BindingSearch.outwards(pooled.range(0, middle + 1).mirrored(), noise)
                .map(SweepAnalysis::mirrored)
                .orElse(null);
        Binding high = BindingSearch.outwards(pooled.range(middle, pooled.size()), noise)
                .orElse(null);
        return told(sweep, passes, readings, pooled, noise, low, high);
    }

    private static SweepResult told(
            Sweep sweep,
            List<Pass> passes,
            List<Samples> readings,
            Samples pooled,
            double noise,
            @Nullable Binding low,
            @Nullable Binding high) {
        double from = low == null ? sweep.lowestSeconds() : low.pulseSeconds().value();
        double to = high == null ? sweep.highestSeconds() : high.pulseSeconds().value();
        Samples free = between(pooled, from, to);
        Estimate running = level(moving(passes, from, to), "scatter and change along the travel");
        Estimate idle = idle(sweep, passes, from, to);
        EndLoads ends = ends(pooled, centreLevel(free, noise));
        SweepResult bare = new SweepResult(
                idle,
                running,
                idle == null ? null : less(running, idle),
                noise,
                low,
                high,
                clear(span(sweep, low, high), pooled, NearStall.of(ends.centreAmps(), sweep.stallAmps())),
                free.pulses()[middle(free, noise)],
                ends,
                SpikeSearch.places(readings, noise),
                HotSpotSearch.of(free, noise),
                AngleReading.of(passes, from, to).orElse(null),
                List.of(),
                SweepWorking.of(sweep, noise, low, high),
                Caution.moving());
        return SweepRemarks.added(bare, sweep, passes);
    }

    /** All passes in one, spikes taken out, each brought to the level of all in the middle half of the sweep. */
    private static Samples pooled(Sweep sweep, List<Samples> passes, double noise) {
        double quarter = (sweep.highestSeconds() - sweep.lowestSeconds()) / 4;
        double from = sweep.lowestSeconds() + quarter;
        double to = sweep.highestSeconds() - quarter;
        List<Samples> clean = passes.stream()
                .map(pass -> SpikeSearch.without(pass, SpikeSearch.heights(pass, noise)))
                .toList();
        double common = clean.stream()
                .flatMapToDouble(pass -> middleLevel(pass, from, to).stream())
                .average()
                .orElse(0);
        List<Samples.Sample> all = new ArrayList<>();
        for (Samples pass : clean) {
            double shift = middleLevel(pass, from, to).stream()
                    .map(level -> common - level)
                    .findFirst()
                    .orElse(0);
            for (int at = 0; at < pass.size(); at++) {
                all.add(new Samples.Sample(pass.pulses()[at], pass.amps()[at] + shift));
            }
        }
        return Samples.of(all).thinned(MOST);
    }

    /** Level of a pass in the middle of the sweep; empty if it hardly goes there. */
    private static OptionalDouble middleLevel(Samples pass, double from, double to) {
        double[] inside = IntStream.range(0, pass.size())
                .filter(at -> pass.pulses()[at] >= from && pass.pulses()[at] <= to)
                .mapToDouble(at -> pass.amps()[at])
                .toArray();
        return inside.length < SMOOTH ? OptionalDouble.empty() : OptionalDouble.of(Samples.median(inside));
    }

    /** The reading in the middle of the travel with little current. */
    private static int middle(Samples pooled, double noise) {
        double[] smooth = pooled.smoothed(SMOOTH);
        double[] rising = smooth.clone();
        Arrays.sort(rising);
        double low = rising[rising.length / 4] + DEVIATIONS * noise;
        int[] places = IntStream.range(0, smooth.length)
                .filter(at -> smooth[at] <= low)
                .toArray();
        return places[places.length / 2];
    }

    private static boolean held(List<Pass> passes) {
        long all = passes.stream().mapToLong(pass -> pass.stops().size()).sum();
        long held = passes.stream()
                .flatMap(pass -> pass.stops().stream())
                .filter(stop -> stop.heldAmps() != null)
                .count();
        return 2 * held > all;
    }

    private static Samples between(Samples pooled, double from, double to) {
        int first = 0;
        while (pooled.pulses()[first] < from) {
            first++;
        }
        int end = pooled.size();
        while (pooled.pulses()[end - 1] > to) {
            end--;
        }
        return pooled.range(first, end);
    }

    private static Samples moving(List<Pass> passes, double from, double to) {
        return Samples.of(passes.stream()
                .flatMap(pass -> pass.stops().stream())
                .filter(stop -> stop.pulseSeconds() >= from && stop.pulseSeconds() <= to)
                .map(stop -> new Samples.Sample(stop.pulseSeconds(), stop.movingAmps()))
                .toList());
    }

    private static @Nullable Estimate idle(Sweep sweep, List<Pass> passes, double from, double to) {
        Double read = sweep.idleAmps();
        if (read != null) {
            return new Estimate(read, 0, List.of());
        }
        List<Samples.Sample> still = new ArrayList<>();
        for (Pass pass : passes) {
            for (Pass.Stop stop : pass.stops()) {
                Double held = stop.heldAmps();
                if (held != null && stop.pulseSeconds() >= from && stop.pulseSeconds() <= to) {
                    still.add(new Samples.Sample(stop.pulseSeconds(), held));
                }
            }
        }
        return still.size() < SMOOTH ? null : level(Samples.of(still), "scatter of the held readings");
    }

    private static Estimate level(Samples samples, String cause) {
        double[] rising = samples.amps().clone();
        Arrays.sort(rising);
        double scatter = (rising[3 * (rising.length - 1) / 4] - rising[(rising.length - 1) / 4]) / QUARTILES;
        return Estimate.ofIndependent(
                Samples.median(rising),
                List.of(new Driver(cause, scatter * DEVIATIONS_OF_MEDIAN / Math.sqrt(rising.length))));
    }

    private static Estimate less(Estimate running, Estimate idle) {
        return Estimate.ofIndependent(
                running.value() - idle.value(),
                List.of(
                        new Driver("running current", running.standardDeviation()),
                        new Driver("current at rest", idle.standardDeviation())));
    }

    private static UsableSpan span(Sweep sweep, @Nullable Binding low, @Nullable Binding high) {
        double below = low == null ? 0 : margin(low);
        double above = high == null ? 0 : margin(high);
        double lowest = low == null ? sweep.lowestSeconds() : low.pulseSeconds().value() + below;
        double highest =
                high == null ? sweep.highestSeconds() : high.pulseSeconds().value() - above;
        double middle = (lowest + highest) / 2;
        return new UsableSpan(Math.min(lowest, middle), Math.max(highest, middle), below, above);
    }

    /** The span without what is near stall at either end, whether or not a bend was found there. */
    private static UsableSpan clear(UsableSpan span, Samples pooled, NearStall limit) {
        double[] smooth = pooled.smoothed(SMOOTH);
        double middle = span.centreSeconds();
        double lowest = span.lowestSeconds();
        double highest = span.highestSeconds();
        for (int at = 0; at < smooth.length; at++) {
            double pulse = pooled.pulses()[at];
            if (smooth[at] >= limit.amps() && pulse < middle) {
                lowest = Math.max(lowest, pulse);
            } else if (smooth[at] >= limit.amps()) {
                highest = Math.min(highest, pulse);
            }
        }
        return new UsableSpan(lowest, highest, span.lowMarginSeconds(), span.highMarginSeconds());
    }

    private static double margin(Binding binding) {
        return MARGIN + DEVIATIONS * binding.pulseSeconds().standardDeviation();
    }

    /** Current in the sixth of the free travel around its lightest stretch [A]. */
    private static double centreLevel(Samples free, double noise) {
        double centre = free.pulses()[middle(free, noise)];
        double reach = (free.pulses()[free.size() - 1] - free.pulses()[0]) / 12;
        Samples around = between(free, centre - reach, centre + reach);
        return Samples.median(around.amps());
    }

    private static EndLoads ends(Samples pooled, double centre) {
        int count = Math.min(END_READINGS, pooled.size());
        return new EndLoads(
                Samples.median(Arrays.copyOf(pooled.amps(), count)),
                Samples.median(Arrays.copyOfRange(pooled.amps(), pooled.size() - count, pooled.size())),
                centre);
    }

    private static Binding mirrored(Binding outwards) {
        Estimate place = outwards.pulseSeconds();
        return new Binding(
                new Estimate(-place.value(), place.standardDeviation(), place.drivers()),
                outwards.ampsPerSecond(),
                outwards.riseAmps());
    }
}
