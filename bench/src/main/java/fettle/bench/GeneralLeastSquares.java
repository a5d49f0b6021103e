package fettle.bench;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/** The circuit as a user of a general-purpose library would fit it: all rows, forward differences, its own stopping rules. */
final class GeneralLeastSquares {
    private static final double[] START = {0.006, 0.001, Math.log(2), 0.002, Math.log(30), 0.97, 1.02};
    private static final double DIFFERENCE = 1e-6;
    private static final double TOLERANCE = 1e-8;
    private static final int MOST = 200;

    private GeneralLeastSquares() {}

    /** R0, R1, ln τ1, R2, ln τ2, start charge, capacity as a share of the true one. */
    static double[] fit(MadeUpLog log) {
        MultivariateJacobianFunction model = point -> at(log, point);
        LeastSquaresBuilder problem = new LeastSquaresBuilder();
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(TOLERANCE)
                .optimize(problem.start(START)
                        .target(log.volts())
                        .model(model)
                        .lazyEvaluation(false)
                        .maxEvaluations(MOST)
                        .maxIterations(MOST)
                        .build())
                .getPoint()
                .toArray();
    }

    private static Pair<RealVector, RealMatrix> at(MadeUpLog log, RealVector point) {
        double[] values = point.toArray();
        double[] volts = volts(log, values);
        double[][] jacobian = new double[volts.length][values.length];
        for (int which = 0; which < values.length; which++) {
            double[] moved = values.clone();
            moved[which] += DIFFERENCE;
            double[] there = volts(log, moved);
            for (int row = 0; row < volts.length; row++) {
                jacobian[row][which] = (there[row] - volts[row]) / DIFFERENCE;
            }
        }
        return new Pair<>(new ArrayRealVector(volts, false), new Array2DRowRealMatrix(jacobian, false));
    }

    private static double[] volts(MadeUpLog log, double[] p) {
        double[] volts = new double[log.amps().length];
        double capacity = p[6] * MadeUpLog.CAPACITY_COULOMBS;
        double charge = p[5];
        double first = 0;
        double second = 0;
        double step = log.seconds()[1] - log.seconds()[0];
        double firstStays = Math.exp(-step / Math.exp(p[2]));
        double secondStays = Math.exp(-step / Math.exp(p[4]));
        for (int row = 0; row < volts.length; row++) {
            double amps = log.amps()[row];
            charge -= amps * step / capacity;
            first = firstStays * first + (1 - firstStays) * amps;
            second = secondStays * second + (1 - secondStays) * amps;
            volts[row] = MadeUpLog.CURVE.volts(charge) - p[0] * amps - p[1] * first - p[3] * second;
        }
        return volts;
    }
}
