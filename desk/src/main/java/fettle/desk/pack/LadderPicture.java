package fettle.desk.pack;

import fettle.desk.frame.Figures;
import fettle.engine.health.LadderReading;
import fettle.engine.health.ResistanceLadder;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The resistance ladder: every cell's resistance at 25 °C against its own first reading, over time. Drawn for the way of
 * reading used most; the table has them all. Lengths are units of a drawing 640 wide and 240 high, its origin top left.
 *
 * @param method the way of reading drawn
 * @param lines one a cell
 * @param limit height of the retire limit
 * @param marks marks of the axis of times
 * @param dates marks of the axis of time
 * @param rows latest reading of each cell by each way of reading
 * @param text the same in words
 */
public record LadderPicture(
        String method,
        List<Line> lines,
        String limit,
        List<TrendPicture.Mark> marks,
        List<TrendPicture.Mark> dates,
        List<Row> rows,
        String text) {
    private static final int LEFT = 46;
    private static final int RIGHT = 600; // room for the cells' numbers at the ends of their lines
    private static final int BOTTOM = 216;
    private static final double LOWEST = 0.8;
    private static final double LEAST_STEP = 11; // between two labels [drawing units]
    private static final int LEAST_READINGS = 2;

    /**
     * One cell.
     *
     * @param corners of its line
     * @param style number of its pattern of dashes, 0 … 5
     * @param name at the end of its line
     */
    public record Line(String corners, int style, String name, String endX, String labelY) {}

    /** One cell's readings by one method in figures. */
    public record Row(String cell, String method, String first, String latest, String times, String when) {}

    /** @param limitTimes the retire limit, times the first reading */
    static @Nullable LadderPicture of(List<LadderReading> ladder, double limitTimes, Figures figures) {
        String method = ResistanceLadder.mostUsed(ladder);
        List<LadderReading> drawn = ladder.stream()
                .filter(reading -> reading.method().equals(method))
                .toList();
        if (drawn.stream().map(LadderReading::at).distinct().count() < LEAST_READINGS) {
            return null;
        }
        double highest =
                drawn.stream().mapToDouble(LadderReading::timesFirst).max().orElse(1);
        Scale scale =
                new Scale(drawn.get(0).at(), drawn.get(drawn.size() - 1).at(), Math.max(limitTimes, highest) + 0.1);
        return new LadderPicture(
                method(method),
                lines(drawn, scale),
                units(scale.y(limitTimes)),
                marks(scale),
                List.of(
                        new TrendPicture.Mark(units(LEFT), figures.month(scale.from())),
                        new TrendPicture.Mark(units(RIGHT), figures.month(scale.to()))),
                rows(ladder, figures),
                "Resistance of each cell at 25 °C over its own first reading, read by " + method(method) + ": now "
                        + String.format(Locale.ROOT, "%.2f", last(drawn, -1)) + " to "
                        + String.format(Locale.ROOT, "%.2f", last(drawn, 1)) + " times, limit "
                        + String.format(Locale.ROOT, "%.1f", limitTimes) + " times");
    }

    private static String method(String written) {
        return written.isBlank() ? "a way not noted" : written;
    }

    /** Least or greatest of the latest readings. */
    private static double last(List<LadderReading> drawn, int sign) {
        TreeMap<Integer, Double> latest = new TreeMap<>();
        drawn.forEach(reading -> latest.put(reading.cell(), reading.timesFirst()));
        return sign
                * latest.values().stream()
                        .mapToDouble(times -> sign * times)
                        .max()
                        .orElse(sign);
    }

    private static List<Line> lines(List<LadderReading> drawn, Scale scale) {
        TreeMap<Integer, List<LadderReading>> cells = new TreeMap<>();
        drawn.forEach(reading ->
                cells.computeIfAbsent(reading.cell(), any -> new ArrayList<>()).add(reading));
        TreeMap<Double, Integer> ends = new TreeMap<>();
        cells.forEach((cell, readings) -> {
            double y = scale.y(readings.get(readings.size() - 1).timesFirst());
            while (ends.containsKey(y)) {
                y += 1e-6;
            }
            ends.put(y, cell);
        });
        TreeMap<Integer, Double> labels = new TreeMap<>();
        double taken = Double.NEGATIVE_INFINITY;
        for (var end : ends.entrySet()) {
            taken = Math.max(end.getKey(), taken + LEAST_STEP);
            labels.put(end.getValue(), taken);
        }
        List<Line> lines = new ArrayList<>();
        cells.forEach((cell, readings) -> lines.add(new Line(
                String.join(" ", readings.stream().map(scale::corner).toList()),
                cell % 6,
                cell == 0 ? "mean" : String.valueOf(cell),
                units(RIGHT + 6),
                units(labels.get(cell)))));
        return lines;
    }

    private static List<TrendPicture.Mark> marks(Scale scale) {
        List<TrendPicture.Mark> marks = new ArrayList<>();
        for (int fifths = 4; fifths / 5.0 <= scale.highest(); fifths += scale.highest() > 3 ? 5 : 1) {
            marks.add(new TrendPicture.Mark(
                    units(scale.y(fifths / 5.0)), String.format(Locale.ROOT, "%.1f×", fifths / 5.0)));
        }
        return marks;
    }

    private static List<Row> rows(List<LadderReading> ladder, Figures figures) {
        TreeMap<String, LadderReading> first = new TreeMap<>();
        TreeMap<String, LadderReading> latest = new TreeMap<>();
        for (LadderReading reading : ladder) {
            String key = String.format(Locale.ROOT, "%s %02d", reading.method(), reading.cell());
            first.putIfAbsent(key, reading);
            latest.put(key, reading);
        }
        List<Row> rows = new ArrayList<>();
        latest.forEach((key, reading) -> rows.add(new Row(
                reading.cell() == 0 ? "mean" : String.valueOf(reading.cell()),
                method(reading.method()),
                TradeUnit.MILLIOHM.print(first.get(key).ohmsAt25(), 1),
                TradeUnit.MILLIOHM.print(reading.ohmsAt25(), 1),
                String.format(Locale.ROOT, "%.2f", reading.timesFirst()),
                figures.moment(reading.at()))));
        return rows;
    }

    private static String units(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** Where instants and ratios lie in the drawing. */
    private record Scale(Instant from, Instant to, double highest) {
        String corner(LadderReading reading) {
            double share = (reading.at().getEpochSecond() - from.getEpochSecond())
                    / Math.max(1.0, to.getEpochSecond() - from.getEpochSecond());
            return units(LEFT + (RIGHT - LEFT) * share) + "," + units(y(reading.timesFirst()));
        }

        double y(double times) {
            double inside = Math.max(LOWEST, times);
            return BOTTOM * (highest - inside) / (highest - LOWEST);
        }
    }
}
