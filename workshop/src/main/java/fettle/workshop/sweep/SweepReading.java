package fettle.workshop.sweep;

import fettle.book.intake.FigureTable;
import fettle.book.intake.LogFile;
import fettle.engine.control.sweep.ColumnDoubts;
import fettle.engine.control.sweep.CurrentUnit;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * A sweep as it was read from a file.
 *
 * @param file name of the file
 * @param sweep its readings
 * @param read how it was read, in sentences
 */
public record SweepReading(String file, Sweep sweep, List<String> read) {
    public SweepReading {
        read = List.copyOf(read);
    }

    /**
     * Reads a file.
     *
     * @throws InputException with line and column of what cannot be read, or the question where columns or units are in
     *     doubt
     */
    public static SweepReading of(Path path, SweepChoices choices) {
        return of(LogFile.of(path), choices);
    }

    /** Reads what a file holds, under the name it came with. */
    public static SweepReading of(String name, byte[] content, SweepChoices choices) {
        return of(new Given(name, content.clone()), choices);
    }

    private static SweepReading of(LogFile file, SweepChoices choices) {
        FigureTable table = FigureTable.read(file);
        SweepColumns columns = new SweepColumns(table);
        int pulse = columns.pulse(choices.pulse());
        int current = columns.current(choices.current(), pulse);
        OptionalInt angle = columns.angle(choices.angle());
        List<FigureTable.Row> rows = filled(table, pulse, current);
        double[] pulses = figures(rows, pulse);
        double[] currents = figures(rows, current);
        double micros = micros(table, pulse, choices);
        for (int at = 0; at < pulses.length; at++) {
            pulses[at] *= micros;
        }
        refuse("pulse", table, ColumnDoubts.pulseDoubt(pulses, currents));
        CurrentUnit unit = unit(table, current, currents, choices);
        List<String> read = new ArrayList<>();
        read.add(table.dialect().words());
        read.add("pulses from " + columns.called(pulse) + " in " + (micros == 1 ? "µs" : "ms") + ", current from "
                + columns.called(current) + " in " + unit.symbol()
                + (angle.isPresent() ? ", angle from " + columns.called(angle.getAsInt()) + " in degrees" : ""));
        if (rows.size() < table.rows().size()) {
            read.add((table.rows().size() - rows.size()) + " rows without pulse or current left out");
        }
        return new SweepReading(
                table.file(),
                new Sweep(points(rows, pulses, currents, unit, angle), choices.idleAmps(), choices.stallAmps()),
                read);
    }

    private static List<FigureTable.Row> filled(FigureTable table, int pulse, int current) {
        if (pulse == current) {
            throw new InputException("current", "pulses and current are the same column. Name two different ones.");
        }
        return table.rows().stream()
                .filter(row -> !row.figures().get(pulse).isNaN()
                        && !row.figures().get(current).isNaN())
                .toList();
    }

    private static double[] figures(List<FigureTable.Row> rows, int column) {
        return rows.stream().mapToDouble(row -> row.figures().get(column)).toArray();
    }

    private static double micros(FigureTable table, int pulse, SweepChoices choices) {
        Double stated = choices.statedMicros();
        Double heading = SweepChoices.micros(table.units().get(pulse));
        return stated != null ? stated : heading != null ? heading : 1;
    }

    private static CurrentUnit unit(FigureTable table, int current, double[] currents, SweepChoices choices) {
        CurrentUnit stated = choices.statedCurrent();
        if (stated != null) {
            return stated;
        }
        CurrentUnit heading = SweepChoices.current(table.units().get(current));
        if (heading == null) {
            heading = SweepChoices.current(table.names().get(current));
        }
        if (heading != null) {
            refuse("current-unit", table, ColumnDoubts.unitDoubt(currents, heading));
            return heading;
        }
        return ColumnDoubts.unit(currents)
                .orElseThrow(() ->
                        new InputException("current-unit", table.file() + ": " + ColumnDoubts.unitQuestion(currents)));
    }

    private static void refuse(String field, FigureTable table, Optional<String> doubt) {
        if (doubt.isPresent()) {
            throw new InputException(field, table.file() + ": " + doubt.get());
        }
    }

    private static List<SweepPoint> points(
            List<FigureTable.Row> rows, double[] pulses, double[] currents, CurrentUnit unit, OptionalInt angle) {
        List<SweepPoint> points = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (int at = 0; at < pulses.length; at++) {
            if (pulses[at] < 500 || pulses[at] > 2500) {
                faults.add(new Fault(
                        "pulse",
                        "line " + rows.get(at).line() + ": pulse is " + Math.round(pulses[at])
                                + " µs; expected 500 to 2500 µs. Mend or remove that row."));
            }
            points.add(new SweepPoint(
                    TradeUnit.MICROSECOND.toSi(pulses[at]),
                    unit.toAmps(currents[at]),
                    angle.isPresent() ? radians(rows.get(at).figures().get(angle.getAsInt())) : null));
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return points;
    }

    private static @Nullable Double radians(double degrees) {
        return Double.isNaN(degrees) ? null : Double.valueOf(TradeUnit.DEGREE.toSi(degrees));
    }

    /** A file that came over the web. */
    private static final class Given implements LogFile {
        private final String name;
        private final byte[] content;

        Given(String name, byte[] content) {
            this.name = name;
            this.content = content;
        }

        @Override
        public String name() {
            return name;
        }

        @Override
        public long bytes() {
            return content.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(content);
        }
    }
}
