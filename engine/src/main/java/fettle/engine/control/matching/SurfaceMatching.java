package fettle.engine.control.matching;

import fettle.engine.control.Caution;
import fettle.engine.control.linkage.SurfaceMotion;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * Matches a second surface to a first one.
 *
 * <p>The first surface keeps straight lines from its centre to its end points. At each curve point the second gets the
 * pulse that gives it the first one's angle; between points a transmitter draws straight lines, and what is left there is
 * the mismatch.
 */
public final class SurfaceMatching {
    private static final int PLACES = 200;

    private final SurfaceMotion first;
    private final SurfaceMotion second;
    private final double upSeconds;
    private final double centreSeconds;
    private final double downSeconds;

    private SurfaceMatching(SurfaceMotion first, SurfaceMotion second, double upRadians, double downRadians) {
        this.first = first;
        this.second = second;
        this.upSeconds = first.pulseSeconds(upRadians);
        this.centreSeconds = first.pulseSeconds(0);
        this.downSeconds = first.pulseSeconds(-downRadians);
    }

    /**
     * Matches two surfaces over wanted throws.
     *
     * @param upRadians trailing edge up [rad], above 0
     * @param downRadians trailing edge down [rad], above 0
     * @param points how many curve points the transmitter has, an odd number from 3 to 17
     * @throws InputException if either surface cannot reach a throw
     */
    public static SurfaceMatch match(
            SurfaceMotion first, SurfaceMotion second, double upRadians, double downRadians, int points) {
        if (points < 3 || points > 17 || points % 2 == 0) {
            throw new InputException(
                    "points", "the curve has " + points + " points; expected an odd number from 3 to 17.");
        }
        new Faults()
                .range("up", "throw up", upRadians, TradeUnit.DEGREE, 0, 90, "Give the throw without a sign.")
                .range("down", "throw down", downRadians, TradeUnit.DEGREE, 0, 90, "Give the throw without a sign.")
                .refuse();
        SurfaceMatching matching = new SurfaceMatching(first, second, upRadians, downRadians);
        List<CurvePoint> curve = matching.curve(points);
        List<Mismatch> byEnds = matching.travel(matching.curve(3));
        List<Mismatch> byCurve = matching.travel(curve);
        return new SurfaceMatch(
                curve, byEnds, byCurve, Working.of(step(3, byEnds), step(points, byCurve)), Caution.moving());
    }

    private List<CurvePoint> curve(int points) {
        List<CurvePoint> curve = new ArrayList<>();
        for (int point = 0; point < points; point++) {
            double stick = 2.0 * point / (points - 1) - 1;
            double pulse = firstSeconds(stick);
            double surface = first.surfaceRadians(pulse);
            curve.add(new CurvePoint(stick, pulse, second.pulseSeconds(surface), surface));
        }
        return curve;
    }

    private double firstSeconds(double stick) {
        double end = stick < 0 ? downSeconds : upSeconds;
        double part = Math.abs(stick);
        return centreSeconds * (1 - part) + end * part; // meets both ends exactly
    }

    private List<Mismatch> travel(List<CurvePoint> curve) {
        List<Mismatch> travel = new ArrayList<>();
        for (int place = 0; place <= PLACES; place++) {
            double stick = 2.0 * place / PLACES - 1;
            double one = firstSeconds(stick);
            double other = secondSeconds(curve, stick);
            travel.add(new Mismatch(
                    stick,
                    first.surfaceRadians(one),
                    second.surfaceRadians(other),
                    second.edgeMetres(other) - first.edgeMetres(one)));
        }
        return travel;
    }

    private static double secondSeconds(List<CurvePoint> curve, double stick) {
        int pieces = curve.size() - 1;
        int piece = Math.min(pieces - 1, (int) Math.floor((stick + 1) / 2 * pieces));
        CurvePoint from = curve.get(piece);
        CurvePoint to = curve.get(piece + 1);
        double part = (stick - from.stick()) / (to.stick() - from.stick());
        return from.secondSeconds() * (1 - part) + to.secondSeconds() * part;
    }

    private static Step step(int points, List<Mismatch> travel) {
        Mismatch worst = SurfaceMatch.worst(travel);
        return new Step(
                "mismatch left with " + points + " points",
                "second pulse where second(pulse) = first(pulse) at each point, straight lines between",
                List.of("worst at stick = " + Math.round(100 * worst.stick()) + " %"),
                TradeUnit.DEGREE.print(Math.abs(worst.radians()), 2) + ", "
                        + TradeUnit.MILLIMETRE.print(Math.abs(worst.edgeMetres()), 2) + " at the trailing edge",
                Citation.published("each surface by its geometry or its readings; linear interpolation"));
    }
}
