package fettle.engine.control.linkage;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;

/**
 * Throws in millimetres and in degrees.
 *
 * <p>The movement is the straight distance a ruler shows between the trailing edge at neutral and deflected:
 * 2·c·sin(δ/2), c from hinge line to trailing edge.
 */
public final class TrailingEdge {
    private TrailingEdge() {}

    /** Movement of the trailing edge [m], with the sign of the angle. */
    public static double movementMetres(double chordMetres, double surfaceRadians) {
        return 2 * chordMetres * Math.sin(surfaceRadians / 2);
    }

    /**
     * Surface angle [rad] for a movement of the trailing edge [m].
     *
     * @throws InputException if the edge cannot move that far on its chord
     */
    public static double surfaceRadians(double chordMetres, double movementMetres) {
        double sine = movementMetres / (2 * chordMetres);
        if (!(chordMetres > 0) || !(Math.abs(sine) <= Math.sin(Math.PI / 4))) {
            throw new InputException(
                    "throw",
                    "a throw of " + TradeUnit.MILLIMETRE.print(movementMetres, 1) + " on a chord of "
                            + TradeUnit.MILLIMETRE.print(chordMetres, 1)
                            + " is past a right angle. Measure the chord from the hinge line to the trailing edge.");
        }
        return 2 * Math.asin(sine);
    }
}
