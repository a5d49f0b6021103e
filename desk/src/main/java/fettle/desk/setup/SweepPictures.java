package fettle.desk.setup;

import fettle.desk.frame.Figures;
import fettle.engine.control.Remark;
import fettle.engine.control.sweep.AngleTrack;
import fettle.engine.control.sweep.Binding;
import fettle.engine.control.sweep.SweepAnalysis;
import fettle.engine.control.sweep.SweepComparison;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.control.sweep.SweepResult;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.workshop.KeptSweep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Kept sweeps as the sheet's page shows them: the travel curve, its figures, and what changed since the one before. */
final class SweepPictures {
    private final Figures figures;

    SweepPictures(Figures figures) {
        this.figures = figures;
    }

    /** A sweep with what it says, worked out once. */
    private record Read(KeptSweep kept, SweepResult result) {
        static Read of(KeptSweep kept) {
            return new Read(kept, SweepAnalysis.of(kept.sweep().sweep()));
        }

        String surface() {
            return kept.sweep().surface();
        }
    }

    /** In the order given, the latest first. */
    List<CraftSheetPage.Sweep> of(List<KeptSweep> sweeps) {
        List<Read> read = sweeps.stream().map(Read::of).toList();
        List<CraftSheetPage.Sweep> shown = new ArrayList<>();
        for (int at = 0; at < read.size(); at++) {
            Read sweep = read.get(at);
            Optional<Read> earlier = read.subList(at + 1, read.size()).stream()
                    .filter(other -> other.surface().equalsIgnoreCase(sweep.surface()))
                    .findFirst();
            shown.add(sweep(sweep, earlier));
        }
        return shown;
    }

    private CraftSheetPage.Sweep sweep(Read read, Optional<Read> earlier) {
        KeptSweep kept = read.kept();
        SweepResult result = read.result();
        List<SweepPoint> points = kept.sweep().sweep().points();
        double low = micros(points, Comparator.naturalOrder());
        double high = micros(points, Comparator.reverseOrder());
        return new CraftSheetPage.Sweep(
                read.surface(),
                SetUpsPage.linkageHref(kept.sweep().craft(), read.surface()),
                figures.moment(kept.sweep().takenAt()),
                "end points " + TradeUnit.MICROSECOND.print(result.span().lowestSeconds(), 0) + " and "
                        + TradeUnit.MICROSECOND.print(result.span().highestSeconds(), 0),
                found(result),
                result.remarks().stream().map(SweepPictures::sentence).toList(),
                earlier.map(before -> since(before.result(), result)).orElse(List.of()),
                panels(points, low, high),
                Bracket.of(result.span(), low, high));
    }

    private static List<String> since(SweepResult before, SweepResult now) {
        List<String> changes = SweepComparison.of(before, now).remarks().stream()
                .map(SweepPictures::sentence)
                .toList();
        return changes.isEmpty() ? List.of("nothing beyond the doubt of the readings") : changes;
    }

    private static List<String> found(SweepResult result) {
        List<String> found = new ArrayList<>();
        add("at rest", result.idleAmps(), TradeUnit.MILLIAMPERE, 0, found);
        add("running", result.runningAmps(), TradeUnit.MILLIAMPERE, 0, found);
        add("friction", result.frictionAmps(), TradeUnit.MILLIAMPERE, 0, found);
        found.add("noise " + TradeUnit.MILLIAMPERE.print(result.noiseAmps(), 0));
        add("binds below", begins(result.low()), TradeUnit.MICROSECOND, 1, found);
        add("binds above", begins(result.high()), TradeUnit.MICROSECOND, 1, found);
        AngleTrack angles = result.angles();
        if (angles != null) {
            add("hysteresis", angles.hysteresisRadians(), TradeUnit.DEGREE, 2, found);
            add("dead band with play", angles.deadBandSeconds(), TradeUnit.MICROSECOND, 1, found);
        }
        return found;
    }

    private static @Nullable Estimate begins(@Nullable Binding binding) {
        return binding == null ? null : binding.pulseSeconds();
    }

    private static void add(String what, @Nullable Estimate value, TradeUnit unit, int decimals, List<String> found) {
        if (value != null) {
            found.add(what + " "
                    + (value.standardDeviation() > 0
                            ? unit.print(value, decimals)
                            : unit.print(value.value(), decimals)));
        }
    }

    private static String sentence(Remark remark) {
        return remark.statement() + ". " + remark.advice();
    }

    private static List<Panel> panels(List<SweepPoint> points, double low, double high) {
        List<SweepPoint> rising = points.stream()
                .sorted(Comparator.comparingDouble(SweepPoint::pulseSeconds))
                .toList();
        List<Panel> panels = new ArrayList<>();
        panels.add(Panel.of(
                "current [A]",
                rising.stream()
                        .map(point -> new Panel.Place(TradeUnit.MICROSECOND.fromSi(point.pulseSeconds()), point.amps()))
                        .toList(),
                low,
                high));
        List<Panel.Place> angles = new ArrayList<>();
        for (SweepPoint point : points) {
            Double angle = point.angleRadians();
            if (angle != null) {
                angles.add(new Panel.Place(
                        TradeUnit.MICROSECOND.fromSi(point.pulseSeconds()), TradeUnit.DEGREE.fromSi(angle)));
            }
        }
        if (!angles.isEmpty()) {
            panels.add(Panel.of("angle [°], in the order it was swept", angles, low, high));
        }
        return panels;
    }

    private static double micros(List<SweepPoint> points, Comparator<Double> first) {
        return points.stream()
                .map(point -> TradeUnit.MICROSECOND.fromSi(point.pulseSeconds()))
                .min(first)
                .orElseThrow();
    }
}
