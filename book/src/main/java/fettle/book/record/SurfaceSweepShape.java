package fettle.book.record;

import fettle.engine.control.sweep.SurfaceSweep;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepPoint;

/** Sweeps of a craft's surfaces, every reading kept. */
public final class SurfaceSweepShape implements Shape<SurfaceSweep> {
    private static final String POINTS = "surface_sweep_point";

    @Override
    public Kind kind() {
        return Kind.SURFACE_SWEEP;
    }

    @Override
    public Row toRow(SurfaceSweep sweep, References references) {
        return CraftReference.row(sweep.craft(), references)
                .with("surface", sweep.surface())
                .with("taken_at_utc", sweep.takenAt().toString())
                .with("file_name", sweep.fileName())
                .with("idle_amps", sweep.sweep().idleAmps())
                .with("stall_amps", sweep.sweep().stallAmps())
                .withParts(
                        POINTS,
                        sweep.sweep().points().stream()
                                .map(SurfaceSweepShape::pointRow)
                                .toList());
    }

    @Override
    public SurfaceSweep fromRow(Row row, References references) {
        return new SurfaceSweep(
                CraftReference.name(row, references),
                row.text("surface"),
                InstantText.read(row, "taken_at_utc"),
                row.text("file_name"),
                new Sweep(
                        row.parts(POINTS).stream().map(SurfaceSweepShape::point).toList(),
                        row.realOrNull("idle_amps"),
                        row.realOrNull("stall_amps")));
    }

    private static Row pointRow(SweepPoint point) {
        return Row.empty()
                .with("pulse_seconds", point.pulseSeconds())
                .with("amps", point.amps())
                .with("angle_radians", point.angleRadians());
    }

    private static SweepPoint point(Row row) {
        return new SweepPoint(row.real("pulse_seconds"), row.real("amps"), row.realOrNull("angle_radians"));
    }
}
