package fettle.engine.control.linkage;

import fettle.engine.units.InputException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two cables from a double servo arm to a double horn.
 *
 * <p>Each cable is a four-bar of its own that only pulls. Where the two ask for different surface angles, the cables are
 * slack by the difference or would have to stretch by it; the surface is taken half-way between.
 *
 * @param first the cable whose tension lifts the trailing edge, as a four-bar
 * @param second the cable on the other side
 */
public record PullPull(FourBar first, FourBar second) implements Linkage {
    public PullPull {
        double firstWay = first.at(0).ratio();
        if (firstWay * second.at(0).ratio() <= 0) {
            throw new InputException(
                    "second",
                    "the two cables turn the surface opposite ways. Give the second cable the opposite ends of arm and"
                            + " horn: both directions half a turn from the first.");
        }
    }

    /** Cables from the two ends of one straight arm to the two ends of one straight horn. */
    public static PullPull straight(FourBar first) {
        return new PullPull(
                first,
                new FourBar(
                        first.armMetres(),
                        first.hornMetres(),
                        first.hingeXMetres(),
                        first.hingeYMetres(),
                        opposite(first.armNeutralRadians()),
                        opposite(first.hornNeutralRadians())));
    }

    private static double opposite(double direction) {
        return direction > 0 ? direction - Math.PI : direction + Math.PI;
    }

    @Override
    public Position at(double servoRadians) {
        Position one = first.at(servoRadians);
        Position other = second.at(servoRadians);
        return new Position(
                servoRadians, (one.surfaceRadians() + other.surfaceRadians()) / 2, (one.ratio() + other.ratio()) / 2);
    }

    @Override
    public double servoRadians(double surfaceRadians) {
        double low = Math.min(first.servoRadians(surfaceRadians), second.servoRadians(surfaceRadians));
        double high = Math.max(first.servoRadians(surfaceRadians), second.servoRadians(surfaceRadians));
        double rising = Math.signum(first.at(0).ratio());
        for (int halving = 0; halving < 60; halving++) { // 60 halvings exhaust a double
            double middle = (low + high) / 2;
            if (rising * (at(middle).surfaceRadians() - surfaceRadians) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Joint play, and the slack of the idle cable where there is any. */
    @Override
    public double playRadians(double servoRadians, double jointPlayMetres) {
        return first.playRadians(servoRadians, jointPlayMetres + Math.max(0, slackMetres(servoRadians)));
    }

    @Override
    public List<TravelLimit> limits() {
        return Stream.concat(first.limits().stream(), second.limits().stream())
                .sorted(Comparator.comparingDouble(limit -> Math.abs(limit.servoRadians())))
                .toList();
    }

    /**
     * Cable left over at a servo angle [m]: positive is slack in the idle cable, negative is how much the pair would have
     * to stretch, which loads bearings and hinge.
     */
    public double slackMetres(double servoRadians) {
        double surface = at(servoRadians).surfaceRadians();
        return first.slackMetres(servoRadians, surface) + second.slackMetres(servoRadians, surface);
    }
}
