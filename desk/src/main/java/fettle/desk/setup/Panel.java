package fettle.desk.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One quantity over the pulse, drawn in a frame of fixed size.
 *
 * @param title what it shows, with its unit
 * @param points the line, as SVG wants it
 * @param marks height of each mark and its label
 * @param feet place of each mark of the pulse and its label
 */
public record Panel(String title, String points, List<Mark> marks, List<Mark> feet) {
    static final int LEFT = 46;
    static final int RIGHT = 590;
    static final int TOP = 18;
    static final int BOTTOM = 118;
    private static final int MARKS = 4;

    /** A line that varies by less than this share of its level is drawn flat. */
    private static final double FLATTEST = 0.05;

    private static final double[] ROUND = {1, 2, 5, 10};

    public Panel {
        marks = List.copyOf(marks);
        feet = List.copyOf(feet);
    }

    /**
     * A mark.
     *
     * @param at where, in the frame's units
     * @param label its figure
     */
    public record Mark(String at, String label) {}

    /** One place of a line: pulse in µs and the figure. */
    record Place(double micros, double figure) {}

    static Panel of(String title, List<Place> line, double lowMicros, double highMicros) {
        double least = line.stream().mapToDouble(Place::figure).min().orElse(0);
        double most = line.stream().mapToDouble(Place::figure).max().orElse(1);
        double step = Math.max(step(least, most), step(0, FLATTEST * Math.abs(most)));
        double bottom = Math.floor(least / step) * step;
        double top = Math.max(Math.ceil(most / step) * step, bottom + step);
        List<Mark> marks = new ArrayList<>();
        for (int at = 0; bottom + at * step <= top + step / 2; at++) {
            double figure = bottom + at * step;
            marks.add(new Mark(plain(up(figure, bottom, top)), figure(figure, step)));
        }
        String points = line.stream()
                .map(place -> plain(across(place.micros(), lowMicros, highMicros)) + ","
                        + plain(up(place.figure(), bottom, top)))
                .collect(Collectors.joining(" "));
        return new Panel(title, points, marks, feet(lowMicros, highMicros));
    }

    /** Where a pulse stands in every panel. */
    static double across(double micros, double lowMicros, double highMicros) {
        return LEFT + (RIGHT - LEFT) * (micros - lowMicros) / (highMicros - lowMicros);
    }

    static String plain(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }

    private static List<Mark> feet(double lowMicros, double highMicros) {
        double step = step(lowMicros, highMicros);
        List<Mark> feet = new ArrayList<>();
        for (double at = Math.ceil(lowMicros / step) * step; at <= highMicros; at += step) {
            feet.add(new Mark(plain(across(at, lowMicros, highMicros)), figure(at, step)));
        }
        return feet;
    }

    private static double up(double figure, double bottom, double top) {
        return BOTTOM - (BOTTOM - TOP) * (figure - bottom) / (top - bottom);
    }

    /** A round step that gives about four marks. */
    private static double step(double least, double most) {
        double rough = Math.max(most - least, 1e-6) / MARKS;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double round : ROUND) {
            if (round * power >= rough) {
                return round * power;
            }
        }
        return 10 * power;
    }

    private static String figure(double figure, double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step)));
        String printed = String.format(Locale.ROOT, "%." + decimals + "f", figure);
        return printed.matches("-0(\\.0*)?") ? printed.substring(1) : printed;
    }
}
