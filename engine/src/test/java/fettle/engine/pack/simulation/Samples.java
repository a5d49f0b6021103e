package fettle.engine.pack.simulation;

import java.util.ArrayList;
import java.util.List;

/** Keeps chosen figures of every instant a simulation hands out. */
final class Samples implements Recorder {
    /** A figure of an instant. */
    interface Figure {
        double of(Moment now);
    }

    private final List<Figure> figures;
    private final List<double[]> rows = new ArrayList<>();

    /** Columns: time [s], then the figures. */
    Samples(Figure... figures) {
        this.figures = List.of(figures);
    }

    @Override
    public void take(Moment now) {
        double[] row = new double[1 + figures.size()];
        row[0] = now.seconds();
        for (int i = 0; i < figures.size(); i++) {
            row[i + 1] = figures.get(i).of(now);
        }
        rows.add(row);
    }

    List<double[]> rows() {
        return rows;
    }

    /** A column at a time, straight between samples; at a jump the value before it. */
    double at(double seconds, int column) {
        for (int row = 1; row < rows.size(); row++) {
            double[] before = rows.get(row - 1);
            double[] after = rows.get(row);
            if (seconds <= after[0]) {
                double width = after[0] - before[0];
                double share = width == 0 ? 0 : (seconds - before[0]) / width;
                return before[column] + share * (after[column] - before[column]);
            }
        }
        return rows.get(rows.size() - 1)[column];
    }

    /** The first time a column has fallen to a value [s], straight between samples. */
    double firstAtMost(double value, int column) {
        for (int row = 1; row < rows.size(); row++) {
            double[] before = rows.get(row - 1);
            double[] after = rows.get(row);
            if (after[column] <= value) {
                double share = (before[column] - value) / (before[column] - after[column]);
                return before[0] + share * (after[0] - before[0]);
            }
        }
        return Double.NaN;
    }
}
