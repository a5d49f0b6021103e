package fettle.planner.curve;

import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.model.PackModel;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Fits a curve to simulated charges of one pack, or of several alike in parallel.
 *
 * <p>Charges from every twentieth of full are simulated; a piece is what starting at its lower end takes longer than starting at
 * its upper. So whole charges are right where a piece begins, and nearly so between; all times are stretched by the most that a
 * charge started between was short. Power in a piece is the most of all charges that pass it.
 */
public final class CurveFitter {
    private static final double LEAST_FRACTION = 0.002;
    private static final double[] STARTS = {0.12, 0.23, 0.34, 0.42, 0.53, 0.64, 0.73, 0.82, 0.88};
    private static final int PIECES = 20;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double JOULES_PER_WATT_HOUR = 3600;

    private CurveFitter() {}

    /**
     * The curve of a charge to full: constant current, then constant voltage until the taper ends.
     *
     * @param packs the packs, alike; more than one means in parallel
     * @param cellVolts volts no cell may pass [V]
     * @param means what charges them; its source is taken as ample, the planner shares that itself
     */
    public static FittedCurve filling(List<PackModel> packs, double cellVolts, ChargeMeans means) {
        return fit(start -> SimulatedCharge.filling(packs, start, cellVolts, means), Direction.FILLING);
    }

    /**
     * The curve of emptying at a constant current; it draws nothing from the source.
     *
     * @param pack the pack
     * @param amps current [A], &gt; 0
     */
    public static FittedCurve emptying(PackModel pack, double amps) {
        return fit(start -> SimulatedCharge.emptying(pack, start, amps), Direction.EMPTYING);
    }

    /** Simulates one charge from a starting fraction. */
    private interface Simulated {
        SimulatedCharge from(double startFraction);
    }

    private static FittedCurve fit(Simulated simulated, Direction direction) {
        boolean filling = direction == Direction.FILLING;
        List<SimulatedCharge> charges = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double start = Math.max(LEAST_FRACTION, i / (double) PIECES);
            boolean done = i == (filling ? PIECES : 0);
            charges.add(done ? SimulatedCharge.nothing() : simulated.from(start));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            pieces.add(filling ? filled(charges, i) : emptied(charges, i));
        }
        double least = 0;
        double most = 0;
        for (double start : STARTS) {
            double off = seconds(pieces, start, filling) / simulated.from(start).seconds() - 1;
            least = Math.min(least, off);
            most = Math.max(most, off);
        }
        double stretch = 1 / (1 + least);
        return new FittedCurve(
                new ChargeCurve(direction, stretched(pieces, stretch)), Math.max((1 + most) * stretch - 1, 0));
    }

    /** What a charge that starts at the lower end takes longer than one that starts at the upper. */
    private static Piece filled(List<SimulatedCharge> charges, int index) {
        SimulatedCharge lower = charges.get(index);
        SimulatedCharge upper = charges.get(index + 1);
        double low = index / (double) PIECES;
        double high = (index + 1) / (double) PIECES;
        double watts = charges.subList(0, index + 1).stream()
                .mapToDouble(charge -> charge.mostWatts(low, high))
                .max()
                .orElseThrow();
        return new Piece(
                low,
                high,
                (lower.seconds() - upper.seconds()) / SECONDS_PER_MINUTE,
                watts,
                (lower.joules() - upper.joules()) / JOULES_PER_WATT_HOUR);
    }

    private static Piece emptied(List<SimulatedCharge> charges, int index) {
        double seconds = charges.get(index + 1).seconds() - charges.get(index).seconds();
        return new Piece(index / (double) PIECES, (index + 1) / (double) PIECES, seconds / SECONDS_PER_MINUTE, 0, 0);
    }

    private static double seconds(List<Piece> pieces, double start, boolean filling) {
        double minutes = 0;
        for (Piece piece : pieces) {
            double within = filling
                    ? piece.highFraction() - Math.max(start, piece.lowFraction())
                    : Math.min(start, piece.highFraction()) - piece.lowFraction();
            double share = within / (piece.highFraction() - piece.lowFraction());
            minutes += Math.max(0, Math.min(1, share)) * piece.minutes();
        }
        return minutes * SECONDS_PER_MINUTE;
    }

    private static List<Piece> stretched(List<Piece> pieces, double stretch) {
        return pieces.stream()
                .map(piece -> new Piece(
                        piece.lowFraction(),
                        piece.highFraction(),
                        piece.minutes() * stretch,
                        piece.watts(),
                        piece.wattHours() * stretch))
                .toList();
    }
}
