package fettle.engine.control.linkage.choice;

import fettle.engine.control.Caution;
import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.TravelLimit;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Tries every combination of holes and clockings.
 *
 * <p>A combination serves if both throws lie within the servo's travel, {@value #MARGIN_DEGREES}° of servo angle or more
 * from any toggle or dead centre, with rod and horn between 40° and 140° all the way. Ranked by the servo torque at the
 * worst point for a hinge moment in proportion to the deflection: the least torque goes with the most servo travel.
 */
public final class LinkageSearch {
    private static final double MARGIN_DEGREES = 10;
    private static final double FLATTEST_DEGREES = 40;

    /** Points at which the torque is looked at over each throw; the curve between them is smooth. */
    private static final int POINTS = 20;

    private LinkageSearch() {}

    /**
     * All linkages that serve, best first.
     *
     * @throws InputException if none does; says how far the closest gets
     */
    public static LinkageChoices search(Fittings fittings, WantedThrows wanted) {
        List<FourBar> linkages = fittings.linkages().toList();
        List<LinkageChoice> found = linkages.stream()
                .map(linkage -> choice(linkage, fittings, wanted))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(LinkageChoice::peakTorqueRatio)
                        .thenComparing(Comparator.comparingDouble(LinkageChoice::travelFraction)
                                .reversed()))
                .toList();
        if (found.isEmpty()) {
            throw new InputException(
                    "throws", linkages.isEmpty() ? allStraight() : noneServes(linkages, fittings, wanted));
        }
        return new LinkageChoices(
                found, fittings.combinations(), Working.of(step(found.get(0), wanted)), Caution.refitting());
    }

    private static Optional<LinkageChoice> choice(FourBar linkage, Fittings fittings, WantedThrows wanted) {
        try {
            double up = linkage.servoRadians(wanted.upRadians());
            double down = linkage.servoRadians(-wanted.downRadians());
            double travel = fittings.servoTravelRadians();
            double margin =
                    Math.min(linkage.range().marginRadians(up), linkage.range().marginRadians(down));
            if (Math.max(Math.abs(up), Math.abs(down)) > travel
                    || margin < TradeUnit.DEGREE.toSi(MARGIN_DEGREES)
                    || !square(linkage, up)
                    || !square(linkage, down)) {
                return Optional.empty();
            }
            return Optional.of(new LinkageChoice(
                    linkage,
                    up,
                    down,
                    (Math.abs(up) + Math.abs(down)) / (2 * travel),
                    Math.max(peak(linkage, up, wanted), peak(linkage, down, wanted)),
                    margin));
        } catch (InputException outOfReach) {
            return Optional.empty();
        }
    }

    private static boolean square(FourBar linkage, double servoRadians) {
        double angle = linkage.rodLine(servoRadians).transmissionRadians();
        double flattest = TradeUnit.DEGREE.toSi(FLATTEST_DEGREES);
        return angle >= flattest && angle <= Math.PI - flattest;
    }

    private static double peak(FourBar linkage, double endRadians, WantedThrows wanted) {
        double peak = 0;
        for (int point = 1; point <= POINTS; point++) {
            var at = linkage.at(endRadians * point / POINTS);
            peak = Math.max(peak, Math.abs(at.ratio() * at.surfaceRadians()) / wanted.largestRadians());
        }
        return peak;
    }

    private static String allStraight() {
        return "in every combination the rod is in line with the arm or the horn at neutral, so the surface could move"
                + " either way. Turn the arm or the horn.";
    }

    private static String noneServes(List<FourBar> linkages, Fittings fittings, WantedThrows wanted) {
        FourBar closest = linkages.stream()
                .max(Comparator.comparingDouble(linkage -> shareReached(linkage, fittings, wanted)))
                .orElseThrow();
        double travel = fittings.servoTravelRadians();
        return "none of the " + fittings.combinations() + " combinations gives "
                + TradeUnit.DEGREE.print(wanted.upRadians(), 1) + " up and "
                + TradeUnit.DEGREE.print(wanted.downRadians(), 1) + " down within ±"
                + TradeUnit.DEGREE.print(travel, 0) + " of the servo, " + MARGIN_DEGREES
                + "° clear of dead centres and with rod and horn between 40° and 140°. The closest, arm "
                + TradeUnit.MILLIMETRE.print(closest.armMetres(), 1) + " and horn "
                + TradeUnit.MILLIMETRE.print(closest.hornMetres(), 1) + ", reaches "
                + TradeUnit.DEGREE.print(reach(closest, travel, 1), 1) + " up and "
                + TradeUnit.DEGREE.print(reach(closest, travel, -1), 1)
                + " down. Take a longer arm, a shorter horn or less throw.";
    }

    private static double shareReached(FourBar linkage, Fittings fittings, WantedThrows wanted) {
        double travel = fittings.servoTravelRadians();
        return Math.min(
                Math.min(1, reach(linkage, travel, 1) / wanted.upRadians()),
                Math.min(1, reach(linkage, travel, -1) / wanted.downRadians()));
    }

    /** Surface angle, without sign, that the servo's travel gives on one side (+1 up, −1 down). */
    private static double reach(FourBar linkage, double travelRadians, int side) {
        double way = side * Math.signum(linkage.at(0).ratio());
        double end = Math.min(
                travelRadians,
                linkage.range()
                                .ahead(way)
                                .map(TravelLimit::servoRadians)
                                .map(Math::abs)
                                .orElse(Double.MAX_VALUE)
                        - TradeUnit.DEGREE.toSi(MARGIN_DEGREES));
        return end <= 0 ? 0 : Math.abs(linkage.at(way * end).surfaceRadians());
    }

    private static Step step(LinkageChoice best, WantedThrows wanted) {
        return new Step(
                "linkage with the least peak torque",
                "servo torque = hinge moment · d(surface)/d(servo); moment in proportion to deflection",
                List.of(
                        "arm hole = "
                                + TradeUnit.MILLIMETRE.print(best.linkage().armMetres(), 1),
                        "horn hole = "
                                + TradeUnit.MILLIMETRE.print(best.linkage().hornMetres(), 1),
                        "servo at " + TradeUnit.DEGREE.print(wanted.upRadians(), 1) + " up = "
                                + TradeUnit.DEGREE.print(best.upServoRadians(), 1),
                        "servo at " + TradeUnit.DEGREE.print(wanted.downRadians(), 1) + " down = "
                                + TradeUnit.DEGREE.print(best.downServoRadians(), 1)),
                String.format(
                        Locale.ROOT,
                        "peak torque %.3f of the hinge moment, %.0f %% of the servo's travel",
                        best.peakTorqueRatio(),
                        100 * best.travelFraction()),
                Citation.published("virtual work on the planar four-bar"));
    }
}
