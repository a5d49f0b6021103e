package fettle.planner.validate;

import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Piece;

/** Walks a charge along its curve, minute by minute. */
final class CurveWalk {
    static final double SAME = 1e-6;

    private final ChargeCurve curve;
    private final double from;
    private final double to;

    CurveWalk(ChargeCurve curve, double from, double to) {
        this.curve = curve;
        this.from = from;
        this.to = to;
    }

    /** Whether the curve goes from one to the other. */
    boolean isPossible() {
        boolean filling = curve.direction() == ChargeCurve.Direction.FILLING;
        return (filling ? to > from : to < from)
                && Math.min(from, to) > curve.lowFraction() - SAME
                && Math.max(from, to) < curve.highFraction() + SAME;
    }

    /** Time needed [min]. */
    double minutes() {
        double sum = 0;
        for (Piece piece : curve.pieces()) {
            sum += part(piece) * piece.minutes();
        }
        return sum;
    }

    /** Energy into the packs [Wh]. */
    double wattHours() {
        double sum = 0;
        for (Piece piece : curve.pieces()) {
            sum += part(piece) * piece.wattHours();
        }
        return sum;
    }

    /** Most power at the packs within one minute from its start [W]. */
    double watts(int minute) {
        double most = 0;
        double time = 0;
        int size = curve.pieces().size();
        boolean filling = curve.direction() == ChargeCurve.Direction.FILLING;
        for (int i = 0; i < size; i++) {
            Piece piece = curve.pieces().get(filling ? i : size - 1 - i);
            double end = time + part(piece) * piece.minutes();
            if (end > time && time < minute + 1 - SAME && end > minute + SAME) {
                most = Math.max(most, piece.watts());
            }
            time = end;
        }
        return most;
    }

    private double part(Piece piece) {
        double within =
                Math.min(Math.max(from, to), piece.highFraction()) - Math.max(Math.min(from, to), piece.lowFraction());
        return within <= 0 ? 0 : within / (piece.highFraction() - piece.lowFraction());
    }
}
