package fettle.planner.timer;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * What the next one of a row of positive figures may be, the figures being lognormal.
 *
 * <p>Formula: the next logarithm lies at mean + t·s·√(1 + 1/n), t of Student with n − 1 degrees: a prediction interval, wider
 * than the confidence interval of the mean (Hahn and Meeker, Statistical Intervals, 1991, section 4.7; from memory). Below
 * three figures s is {@value #USUAL} with {@value #USUAL_DEGREES} degrees, from memory.
 *
 * @param meanLog mean of the logarithms
 * @param scale s·√(1 + 1/n)
 * @param degrees degrees of freedom; infinite where nothing was estimated
 */
record LogSpread(double meanLog, double scale, double degrees) {
    static final double USUAL = 0.2;
    static final double USUAL_DEGREES = 4;
    private static final int FEWEST = 3;
    private static final double MANY = 1e6;

    /** Of figures &gt; 0, at least one. */
    static LogSpread of(List<Double> figures) {
        int count = figures.size();
        double mean = figures.stream().mapToDouble(Math::log).average().orElseThrow();
        double squares = figures.stream()
                .mapToDouble(figure -> (Math.log(figure) - mean) * (Math.log(figure) - mean))
                .sum();
        boolean few = count < FEWEST;
        double deviation = few ? USUAL : Math.sqrt(squares / (count - 1));
        return new LogSpread(mean, deviation * Math.sqrt(1 + 1.0 / count), few ? USUAL_DEGREES : count - 1);
    }

    /**
     * The same with another, independent doubt of known size added.
     *
     * <p>Formula: degrees of the sum after Welch and Satterthwaite, JCGM 100:2008 (GUM), equation G.2b.
     */
    LogSpread plus(double deviation) {
        double variance = scale * scale + deviation * deviation;
        return new LogSpread(
                meanLog,
                Math.sqrt(variance),
                scale == 0 ? MANY : degrees * variance * variance / (scale * scale * scale * scale));
    }

    /** The figure that the next one falls below with a probability. */
    double quantile(double probability) {
        double score = degrees >= MANY
                ? new NormalDistribution().inverseCumulativeProbability(probability)
                : new TDistribution(degrees).inverseCumulativeProbability(probability);
        return Math.exp(meanLog + score * scale);
    }
}
