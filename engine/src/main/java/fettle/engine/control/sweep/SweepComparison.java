package fettle.engine.control.sweep;

import fettle.engine.control.Remark;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sweep beside an earlier one of the same surface.
 *
 * @param lowShiftSeconds how far binding at short pulses moved, later less earlier [s]; {@code null} unless both bound
 * @param highShiftSeconds the same at long pulses [s]
 * @param runningRiseAmps change of the running current [A]
 * @param remarks changes beyond twice their ±
 */
public record SweepComparison(
        @Nullable Estimate lowShiftSeconds,
        @Nullable Estimate highShiftSeconds,
        Estimate runningRiseAmps,
        List<Remark> remarks) {
    private static final double DEVIATIONS = 2;

    /** Change of running current worth a word [A] and as a share of the earlier one; Fettle's choice. */
    private static final double LEAST_RISE = 0.03;

    private static final double LEAST_SHARE = 0.2;

    public SweepComparison {
        remarks = List.copyOf(remarks);
    }

    public static SweepComparison of(SweepResult earlier, SweepResult later) {
        Estimate low = shift(earlier.low(), later.low());
        Estimate high = shift(earlier.high(), later.high());
        Estimate running = difference(earlier.runningAmps(), later.runningAmps());
        List<Remark> remarks = new ArrayList<>();
        moved("short", low, 1, remarks);
        moved("long", high, -1, remarks);
        appeared("short", earlier.low(), later.low(), remarks);
        appeared("long", earlier.high(), later.high(), remarks);
        running(earlier, running, remarks);
        worn(earlier, later, remarks);
        return new SweepComparison(low, high, running, remarks);
    }

    private static @Nullable Estimate shift(@Nullable Binding earlier, @Nullable Binding later) {
        return earlier == null || later == null ? null : difference(earlier.pulseSeconds(), later.pulseSeconds());
    }

    private static Estimate difference(Estimate earlier, Estimate later) {
        return Estimate.ofIndependent(
                later.value() - earlier.value(),
                List.of(
                        new Driver("earlier sweep", earlier.standardDeviation()),
                        new Driver("later sweep", later.standardDeviation())));
    }

    private static void moved(String side, @Nullable Estimate shift, int inwards, List<Remark> remarks) {
        if (shift == null || Math.abs(shift.value()) <= DEVIATIONS * shift.standardDeviation()) {
            return;
        }
        boolean closer = shift.value() * inwards > 0;
        remarks.add(new Remark(
                "binding-moved",
                "binding at " + side + " pulses moved by " + TradeUnit.MICROSECOND.print(shift, 0)
                        + (closer ? ", into the travel" : ", outwards"),
                closer
                        ? "Look for a slipped rod, a bent horn or swollen hinge; set the end point again."
                        : "Look for a loose rod or horn before widening the end point."));
    }

    private static void appeared(
            String side, @Nullable Binding earlier, @Nullable Binding later, List<Remark> remarks) {
        if (earlier == null && later != null) {
            remarks.add(new Remark(
                    "binding-new",
                    "the surface binds at " + side + " pulses at "
                            + TradeUnit.MICROSECOND.print(later.pulseSeconds(), 0)
                            + ", where the earlier sweep did not",
                    "Unless this sweep went further, find what fouls."));
        }
    }

    private static void running(SweepResult earlier, Estimate change, List<Remark> remarks) {
        double least = Math.max(LEAST_RISE, LEAST_SHARE * earlier.runningAmps().value());
        if (change.value() > Math.max(least, DEVIATIONS * change.standardDeviation())) {
            remarks.add(new Remark(
                    "friction-up",
                    "running current rose by " + TradeUnit.AMPERE.print(change, 2),
                    "Move the surface by hand with the rod off; clean or ease the hinge, or suspect the servo."));
        }
    }

    private static void worn(SweepResult earlier, SweepResult later, List<Remark> remarks) {
        long before = earlier.spikes().size();
        long now = later.spikes().size();
        if (now > before) {
            remarks.add(new Remark(
                    "spikes-up",
                    now + " places stand out, " + before + " before",
                    "Sweep again; spikes that stay at one place are wear."));
        }
    }
}
