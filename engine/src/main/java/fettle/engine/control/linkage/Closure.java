package fettle.engine.control.linkage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A driving crank at the origin, a driven crank at a second pivot and a rod between them, on the branch of neutral.
 *
 * <p>The rod end at distance r from the second pivot closes the triangle (driven b, rod L, r):
 * cos(driven − direction of r) = (b² + r² − L²) / (2·b·r), Freudenstein's relation written for the driven crank. The sign
 * of the angle cannot change before rod and driven crank come into line, r = L + b or r = |L − b|.
 */
final class Closure {
    /** Cosine beyond which rod and crank only touch their line and swing on; ten thousand times rounding. */
    private static final double TOUCH = 1e-12;

    private static final double FULL_TURN = 2 * Math.PI;

    private final double driver;
    private final double driven;
    private final double pivotX;
    private final double pivotY;
    private final double driverNeutral;
    private final double drivenNeutral;
    private final double rod;
    private final double branch;

    /** Lengths in any one unit, directions [rad]; the rod is as long as neutral needs it. */
    Closure(double driver, double driven, double pivotX, double pivotY, double driverNeutral, double drivenNeutral) {
        this.driver = driver;
        this.driven = driven;
        this.pivotX = pivotX;
        this.pivotY = pivotY;
        this.driverNeutral = driverNeutral;
        this.drivenNeutral = drivenNeutral;
        this.rod = Math.hypot(
                pivotX + driven * Math.cos(drivenNeutral) - driver * Math.cos(driverNeutral),
                pivotY + driven * Math.sin(drivenNeutral) - driver * Math.sin(driverNeutral));
        this.branch = Math.signum(Math.sin(drivenNeutral - towardsEnd(driverNeutral)));
    }

    /** The same parts driven from the other end. */
    Closure reversed() {
        return new Closure(driven, driver, -pivotX, -pivotY, drivenNeutral, driverNeutral);
    }

    double rod() {
        return rod;
    }

    /** Angle of the driven crank from neutral for an angle of the driving one [rad], within half a turn. */
    OptionalDouble driven(double driverAngle) {
        double phi = driverNeutral + driverAngle;
        double reach = reach(phi);
        double cosine = (driven * driven + reach * reach - rod * rod) / (2 * driven * reach);
        if (!(Math.abs(cosine) <= 1 + TOUCH)) {
            return OptionalDouble.empty();
        }
        double opening = Math.acos(Math.max(-1, Math.min(1, cosine)));
        return OptionalDouble.of(Math.IEEEremainder(towardsEnd(phi) + branch * opening - drivenNeutral, FULL_TURN));
    }

    /** Whether no line lies between neutral and an angle of the driving crank. */
    boolean reaches(double driverAngle) {
        return lines().stream()
                .filter(line -> line.meeting() != Meeting.TOUCHING)
                .mapToDouble(Line::driverAngle)
                .noneMatch(end -> end * driverAngle > 0 && Math.abs(end) < Math.abs(driverAngle));
    }

    /** The nearest line on either side, where there is one. */
    List<Line> nearestLines() {
        return lines().stream().filter(line -> reaches(line.driverAngle())).toList();
    }

    /** Whether the sine of the angle between rod and driven crank at neutral exceeds a bound. */
    boolean clearOfLines(double smallestSine) {
        double x = pivotX + driven * Math.cos(drivenNeutral) - driver * Math.cos(driverNeutral);
        double y = pivotY + driven * Math.sin(drivenNeutral) - driver * Math.sin(driverNeutral);
        return Math.abs(Math.cos(drivenNeutral) * y - Math.sin(drivenNeutral) * x) > smallestSine * rod;
    }

    /** Angles of the driving crank from neutral, within half a turn either way, where rod and driven crank are in line. */
    List<Line> lines() {
        List<Line> all = new ArrayList<>();
        add(all, rod + driven, Meeting.STRETCHED);
        add(all, Math.abs(rod - driven), Meeting.FOLDED);
        return all;
    }

    private void add(List<Line> all, double reach, Meeting meeting) {
        double distance = Math.hypot(pivotX, pivotY);
        double cosine = (driver * driver + distance * distance - reach * reach) / (2 * driver * distance);
        double towardsPivot = Math.atan2(pivotY, pivotX) - driverNeutral;
        if (Math.abs(cosine) > 1 + TOUCH) {
            return;
        }
        if (Math.abs(cosine) > 1 - TOUCH) {
            double opposite = cosine < 0 ? Math.PI : 0;
            all.add(new Line(Math.IEEEremainder(towardsPivot + opposite, FULL_TURN), Meeting.TOUCHING));
            return;
        }
        for (double side : new double[] {-1, 1}) {
            all.add(new Line(Math.IEEEremainder(towardsPivot + side * Math.acos(cosine), FULL_TURN), meeting));
        }
    }

    private double reach(double phi) {
        return Math.hypot(driver * Math.cos(phi) - pivotX, driver * Math.sin(phi) - pivotY);
    }

    private double towardsEnd(double phi) {
        return Math.atan2(driver * Math.sin(phi) - pivotY, driver * Math.cos(phi) - pivotX);
    }

    /** How rod and driven crank come into line: TOUCHING if the driving crank does too and the motion can go on. */
    enum Meeting {
        STRETCHED,
        FOLDED,
        TOUCHING
    }

    /** An angle of the driving crank from neutral [rad] at which rod and driven crank are in line. */
    record Line(double driverAngle, Meeting meeting) {}
}
