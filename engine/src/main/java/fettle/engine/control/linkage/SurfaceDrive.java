package fettle.engine.control.linkage;

import fettle.engine.control.Caution;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * A servo, its linkage and the surface it moves.
 *
 * @param linkage what joins them
 * @param scale pulses to servo angles
 * @param chordMetres from hinge line to trailing edge [m], 2 mm … 2 m
 */
public record SurfaceDrive(Linkage linkage, PulseScale scale, double chordMetres) implements SurfaceMotion {
    private static final Citation GEOMETRY =
            Citation.published("closure of the planar four-bar and virtual work; plane geometry");

    public SurfaceDrive {
        new Faults()
                .range(
                        "chord",
                        "chord of the surface",
                        chordMetres,
                        TradeUnit.MILLIMETRE,
                        2,
                        2000,
                        "Measure from the hinge line to the trailing edge.")
                .refuse();
    }

    /**
     * The surface at a pulse.
     *
     * @throws InputException for pulses outside 500 … 2500 µs, at or past a toggle or dead centre
     */
    public TravelPoint at(double pulseSeconds) {
        PulseScale.checkPulse(new Faults(), "pulse", "pulse", pulseSeconds).refuse();
        double servoRadians = scale.servoRadians(pulseSeconds);
        linkage.range().requireInside("pulse", servoRadians);
        Position position = linkage.at(servoRadians);
        return new TravelPoint(
                pulseSeconds,
                position,
                TrailingEdge.movementMetres(chordMetres, position.surfaceRadians()),
                position.ratio() * scale.radiansPerPulseSecond());
    }

    @Override
    public double surfaceRadians(double pulseSeconds) {
        return at(pulseSeconds).position().surfaceRadians();
    }

    @Override
    public double pulseSeconds(double surfaceRadians) {
        return at(scale.pulseSeconds(linkage.servoRadians(surfaceRadians))).pulseSeconds();
    }

    /**
     * The surface over a span of pulses, both ends included.
     *
     * @param lowestSeconds lowest pulse [s]
     * @param highestSeconds highest pulse [s]
     * @param intervals how many equal steps between them, 1 … 10 000
     */
    public TravelCurve curve(double lowestSeconds, double highestSeconds, int intervals) {
        if (!(lowestSeconds < highestSeconds) || intervals < 1 || intervals > 10_000) {
            throw new InputException(
                    "pulses", "the lowest pulse must be below the highest, with 1 to 10000 steps between them.");
        }
        List<TravelPoint> points = new ArrayList<>();
        for (int step = 0; step <= intervals; step++) {
            double part = (double) step / intervals;
            points.add(at(lowestSeconds * (1 - part) + highestSeconds * part)); // meets both ends exactly
        }
        TravelPoint first = points.get(0);
        TravelPoint last = points.get(intervals);
        return new TravelCurve(
                points,
                linkage.range(),
                marginRadians(first, last),
                Differential.of(
                        first.position().surfaceRadians(), last.position().surfaceRadians()),
                LinkageRemarks.of(linkage, List.of(first, last)),
                Working.of(angleStep(first), angleStep(last)),
                Caution.moving());
    }

    /**
     * Pulses that give two throws.
     *
     * @param upRadians trailing edge up [rad], ≥ 0
     * @param downRadians trailing edge down [rad], ≥ 0
     * @throws InputException if the surface cannot get there, or the pulse falls outside 500 … 2500 µs
     */
    public EndPoints endPoints(double upRadians, double downRadians) {
        new Faults()
                .range("up", "throw up", upRadians, TradeUnit.DEGREE, 0, 90, "Give the throw without a sign.")
                .range("down", "throw down", downRadians, TradeUnit.DEGREE, 0, 90, "Give the throw without a sign.")
                .refuse();
        TravelPoint up = at(pulseSeconds(upRadians));
        TravelPoint down = at(pulseSeconds(-downRadians));
        return new EndPoints(
                up,
                down,
                scale.centreSeconds(),
                marginRadians(up, down),
                LinkageRemarks.of(linkage, List.of(up, down)),
                Working.of(angleStep(up), angleStep(down)),
                Caution.moving());
    }

    /**
     * Movement of the trailing edge with the servo held [m], by joint play and the servo's own gear play.
     *
     * @param pulseSeconds where [s]
     * @param jointPlayMetres play of all joints along the rod [m], ≥ 0
     * @param gearPlayRadians play of the servo's output [rad], ≥ 0
     */
    public double freePlayMetres(double pulseSeconds, double jointPlayMetres, double gearPlayRadians) {
        new Faults()
                .range("jointPlay", "joint play", jointPlayMetres, TradeUnit.MILLIMETRE, 0, 5, "Add up the joints.")
                .range("gearPlay", "gear play", gearPlayRadians, TradeUnit.DEGREE, 0, 20, "Rock the arm and measure.")
                .refuse();
        Position position = at(pulseSeconds).position();
        double angle = linkage.playRadians(position.servoRadians(), jointPlayMetres)
                + gearPlayRadians * Math.abs(position.ratio());
        return TrailingEdge.movementMetres(chordMetres, angle);
    }

    private double marginRadians(TravelPoint one, TravelPoint other) {
        TravelRange range = linkage.range();
        return Math.min(
                range.marginRadians(one.position().servoRadians()),
                range.marginRadians(other.position().servoRadians()));
    }

    private Step angleStep(TravelPoint point) {
        Position at = point.position();
        return new Step(
                "surface at " + TradeUnit.MICROSECOND.print(point.pulseSeconds(), 0),
                "servo = (pulse − centre) · slope; |hinge + b·e^(iψ) − a·e^(iφ)| = rod; edge = 2·c·sin(δ/2)",
                List.of(
                        "centre = " + TradeUnit.MICROSECOND.print(scale.centreSeconds(), 0),
                        "servo = " + TradeUnit.DEGREE.print(at.servoRadians(), 2),
                        "chord c = " + TradeUnit.MILLIMETRE.print(chordMetres, 1)),
                TradeUnit.DEGREE.print(at.surfaceRadians(), 2) + ", "
                        + TradeUnit.MILLIMETRE.print(point.edgeMetres(), 1) + ", ratio "
                        + Differential.figure(at.ratio()),
                GEOMETRY);
    }
}
