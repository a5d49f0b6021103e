package fettle.engine.control.load;

import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.stream.Stream;

/**
 * A plain flap in the air stream.
 *
 * <p>Formula: H = (|C_hα|·|α| + |C_hδ|·|δ|)·½ρV²·c_f²·b. To design for: the thin-aerofoil coefficients as they are. To
 * expect: {@value #EXPECTED_SHARE} of them, from tripped viscous panel calculations (NACA 0009 and 0012, E 0.25 and 0.30,
 * Re 2e5 and 5e5), which lie between 0.42 and 0.77 with flap and
 * attack the same way; no wind-tunnel values could be read.
 * <p>Leaves out: finite span (lowers α's share), gaps, horn balance, flutter, gusts.
 *
 * @param chordMetres surface chord behind the hinge [m]
 * @param spanMetres length along the hinge [m]
 * @param chordRatio surface chord over the whole chord there, 0.05 … 0.6
 * @param speed airspeed [m/s], with ±
 * @param density air density [kg/m³]
 * @param attackRadians angle of attack [rad], without sign
 */
public record AirLoad(
        double chordMetres, double spanMetres, double chordRatio, Estimate speed, double density, double attackRadians)
        implements SurfaceLoad {
    static final double EXPECTED_SHARE = 0.6;

    /** Standard deviation of that share. */
    static final double SHARE_DEVIATION = 0.1;

    /** Deflection beyond which the flow separates and the estimate is rough [rad]. */
    public static final double ROUGH_BEYOND = TradeUnit.DEGREE.toSi(20);

    private static final double DEVIATIONS = 2;

    public AirLoad {
        new Faults()
                .range(
                        "chord",
                        "surface chord",
                        chordMetres,
                        TradeUnit.MILLIMETRE,
                        2,
                        2000,
                        "Measure behind the hinge.")
                .range(
                        "span",
                        "surface length",
                        spanMetres,
                        TradeUnit.MILLIMETRE,
                        5,
                        10_000,
                        "Measure along the hinge.")
                .range("speed", "airspeed", speed.value(), TradeUnit.METRE_PER_SECOND, 0, 200, "Give the fastest dive.")
                .range("attack", "angle of attack", attackRadians, TradeUnit.DEGREE, 0, 30, "Give it without sign.")
                .refuse();
        ThinAerofoil.momentPerAttack(chordRatio); // refuses a ratio outside the theory
    }

    /** Moment [N·m] for a coefficient without sign. */
    public static double newtonMetres(
            double coefficient, double dynamicPascals, double chordMetres, double spanMetres) {
        return coefficient * dynamicPascals * chordMetres * chordMetres * spanMetres;
    }

    /** Dynamic pressure [Pa]. */
    public double dynamicPascals() {
        return dynamicPascals(speed.value());
    }

    /** Coefficient of the thin aerofoil, without sign. */
    public double coefficient(double surfaceRadians) {
        return Math.abs(ThinAerofoil.momentPerAttack(chordRatio)) * attackRadians
                + Math.abs(ThinAerofoil.momentPerDeflection(chordRatio)) * Math.abs(surfaceRadians);
    }

    @Override
    public double designNewtonMetres(double surfaceRadians) {
        double fast = speed.value() + DEVIATIONS * speed.standardDeviation();
        return newtonMetres(coefficient(surfaceRadians), dynamicPascals(fast), chordMetres, spanMetres);
    }

    @Override
    public Estimate expectedNewtonMetres(double surfaceRadians) {
        double thin = newtonMetres(coefficient(surfaceRadians), dynamicPascals(), chordMetres, spanMetres);
        double expected = EXPECTED_SHARE * thin;
        double speedShare = speed.value() == 0 ? 0 : 2 * speed.standardDeviation() / speed.value();
        return Estimate.ofIndependent(
                expected,
                Stream.of(
                                new Driver("viscosity and profile", SHARE_DEVIATION * thin),
                                new Driver("airspeed", expected * speedShare))
                        .filter(driver -> driver.standardDeviation() > 0)
                        .toList());
    }

    private double dynamicPascals(double metresPerSecond) {
        return density * metresPerSecond * metresPerSecond / 2;
    }
}
