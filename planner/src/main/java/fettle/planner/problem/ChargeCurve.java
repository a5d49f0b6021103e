package fettle.planner.problem;

import java.util.List;

/**
 * Time and power of a charge or discharge against the pack's charge: straight pieces that follow each other upwards.
 *
 * <p>Neither time nor power may be understated: a piece's power is the most the pack takes anywhere in it.
 *
 * @param direction whether it fills or empties
 * @param pieces the pieces from low to high charge, each beginning where the one before ends
 */
public record ChargeCurve(Direction direction, List<Piece> pieces) {
    public ChargeCurve {
        pieces = List.copyOf(pieces);
    }

    /** Which way the charge goes. */
    public enum Direction {
        FILLING,
        EMPTYING
    }

    /**
     * One straight piece.
     *
     * @param lowFraction its lower charge
     * @param highFraction its upper charge, above the lower
     * @param minutes time for the whole piece [min], &gt; 0
     * @param watts most power at the pack within the piece [W]; 0 for emptying
     * @param wattHours energy into the pack over the whole piece [Wh]; 0 for emptying
     */
    public record Piece(double lowFraction, double highFraction, double minutes, double watts, double wattHours) {}

    /** One rate from empty to full. */
    public static ChargeCurve even(Direction direction, double minutes, double watts) {
        double into = direction == Direction.FILLING ? watts : 0;
        return new ChargeCurve(direction, List.of(new Piece(0, 1, minutes, into, into * minutes / 60)));
    }

    /** Lowest and highest charge it reaches. */
    public double lowFraction() {
        return pieces.get(0).lowFraction;
    }

    public double highFraction() {
        return pieces.get(pieces.size() - 1).highFraction;
    }
}
