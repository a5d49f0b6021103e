package fettle.planner.solve;

import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Time, power and energy of one charge along a curve. */
final class CurveTime {
    /** A figure this little above a whole one is that whole one. */
    private static final double ROUNDING = 1e-9;

    private final List<double[]> stretches = new ArrayList<>();
    private double minutes;
    private double wattHours;

    /** A charge from one fraction to another in the curve's direction. */
    CurveTime(ChargeCurve curve, double from, double to) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        List<Piece> pieces = new ArrayList<>(curve.pieces());
        if (curve.direction() == Direction.EMPTYING) {
            Collections.reverse(pieces);
        }
        for (Piece piece : pieces) {
            double within = Math.min(high, piece.highFraction()) - Math.max(low, piece.lowFraction());
            double share = within / (piece.highFraction() - piece.lowFraction());
            if (share > 0) {
                minutes += share * piece.minutes();
                wattHours += share * piece.wattHours();
                stretches.add(new double[] {minutes, piece.watts()});
            }
        }
    }

    /** Whether the curve reaches from one fraction to the other in its direction. */
    static boolean reaches(ChargeCurve curve, double from, double to) {
        boolean way = curve.direction() == Direction.FILLING ? from < to : from > to;
        return way
                && curve.lowFraction() <= Math.min(from, to) + ROUNDING
                && curve.highFraction() >= Math.max(from, to) - ROUNDING;
    }

    /** Whole minutes, rounded up, at least 1. */
    int wholeMinutes() {
        return Math.max(1, (int) Math.ceil(minutes - ROUNDING));
    }

    /** Energy drawn from a source through a charger, whole Wh, rounded up. */
    int sourceWattHours(double efficiency) {
        return ceil(wattHours / efficiency);
    }

    /** Most power within every step, divided by an efficiency, whole W, rounded up. */
    int[] watts(int stepMinutes, double efficiency) {
        int ticks = Ticks.up(wholeMinutes(), stepMinutes);
        int[] watts = new int[ticks];
        double began = 0;
        for (double[] stretch : stretches) {
            int last = Math.min(ticks - 1, (int) Math.floor((stretch[0] - ROUNDING) / stepMinutes));
            for (int tick = (int) Math.floor(began / stepMinutes); tick <= last; tick++) {
                watts[tick] = Math.max(watts[tick], ceil(stretch[1] / efficiency));
            }
            began = stretch[0];
        }
        return watts;
    }

    private static int ceil(double value) {
        return (int) Math.ceil(value - ROUNDING);
    }
}
