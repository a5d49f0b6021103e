package fettle.engine.health.capacity;

import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;

/**
 * The recursion that follows capacity from pair to pair in six sums, with fading memory. Immutable.
 *
 * <p>Formula: with y~ = K y, Q~ = K Q, the least of J = [c4 Q⁴ − 2 c5 Q³ + (c1 + c6) Q² − 2 c2 Q + c3] / (1 + Q²)² over Q~ > 0,
 * where c1 … c6 = Σ x²/sy², xy/sy², y²/sy², x²/sx², xy/sx², y²/sx², each sum multiplied by γ before a pair is added.
 * σ = √(2 / J″) / K.
 *
 * <p>An approximation: it weighs a pair whose sx/sy is far from 1/K other than exact total least squares does, so no prior
 * is fed to it as a made-up pair.
 *
 * @param scalePerCoulomb K [1/C], the usual ratio sx/sy of a pair
 * @param memory γ, 0 &lt; γ ≤ 1; 1 forgets nothing
 * @see "G. L. Plett, J. Power Sources 196 (2011) 2319-2331"
 */
public record CapacityRecursion(
        double scalePerCoulomb, double memory, double c1, double c2, double c3, double c4, double c5, double c6) {
    private static final double IMAGINARY_TOLERANCE = 1e-7; // of a root that is real but for rounding
    private static final double ROOT_ACCURACY = 1e-13;

    /** Before the first pair. */
    public static CapacityRecursion starting(double scalePerCoulomb, double memory) {
        return new CapacityRecursion(scalePerCoulomb, memory, 0, 0, 0, 0, 0, 0);
    }

    /** After one more pair. */
    public CapacityRecursion plus(CapacityPair pair) {
        double x = pair.changeFraction();
        double y = scalePerCoulomb * pair.coulombs();
        double wx = 1 / (pair.changeDeviation() * pair.changeDeviation());
        double sy = scalePerCoulomb * pair.coulombsDeviation();
        double wy = 1 / (sy * sy);
        return new CapacityRecursion(
                scalePerCoulomb,
                memory,
                memory * c1 + wy * x * x,
                memory * c2 + wy * x * y,
                memory * c3 + wy * y * y,
                memory * c4 + wx * x * x,
                memory * c5 + wx * x * y,
                memory * c6 + wx * y * y);
    }

    /** Capacity after the pairs so far [C]. */
    public double capacityCoulombs() {
        return scaledCapacity() / scalePerCoulomb;
    }

    /** One standard deviation of the capacity [C], from the random errors alone. */
    public double standardDeviation() {
        return Math.sqrt(2 / curvature(scaledCapacity())) / scalePerCoulomb;
    }

    private double scaledCapacity() {
        PolynomialFunction quartic = new PolynomialFunction(-c2, c1 - 2 * c3 + c6, 3 * (c2 - c5), 2 * c4 - c1 - c6, c5);
        Complex[] roots =
                new LaguerreSolver(ROOT_ACCURACY).solveAllComplex(quartic.getCoefficients(), Math.sqrt(c3 / c1));
        double best = Double.NaN;
        for (Complex root : roots) {
            boolean real = Math.abs(root.getImaginaryPart()) < IMAGINARY_TOLERANCE * Math.abs(root.getRealPart());
            boolean candidate = real && root.getRealPart() > 0;
            if (candidate && (Double.isNaN(best) || cost(root.getRealPart()) < cost(best))) {
                best = root.getRealPart();
            }
        }
        return best;
    }

    private double cost(double q) {
        double top = (((c4 * q - 2 * c5) * q + c1 + c6) * q - 2 * c2) * q + c3;
        return top / ((1 + q * q) * (1 + q * q));
    }

    private double curvature(double q) {
        double top = -2 * c5;
        top = top * q + 3 * c1 - 6 * c4 + 3 * c6;
        top = top * q - 12 * c2 + 16 * c5;
        top = top * q - 8 * c1 + 10 * c3 + 6 * c4 - 8 * c6;
        top = top * q + 12 * c2 - 6 * c5;
        top = top * q + c1 - 2 * c3 + c6;
        return 2 * top / Math.pow(1 + q * q, 4);
    }
}
