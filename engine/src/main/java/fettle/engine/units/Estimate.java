package fettle.engine.units;

import java.util.Comparator;
import java.util.List;

/**
 * An uncertain number: value ± one standard deviation, and what drives it, largest cause first.
 *
 * @param value the best value, SI
 * @param standardDeviation one standard deviation, same unit, ≥ 0
 * @param drivers the causes, sorted here by size
 */
public record Estimate(double value, double standardDeviation, List<Driver> drivers) {
    public Estimate {
        if (!Double.isFinite(value) || !Double.isFinite(standardDeviation) || standardDeviation < 0) {
            throw new IllegalArgumentException("estimate must be finite, got " + value + " ± " + standardDeviation);
        }
        drivers = drivers.stream()
                .sorted(Comparator.comparingDouble(Driver::standardDeviation).reversed())
                .toList();
    }

    /** An estimate whose ± is the root sum of squares of independent causes. */
    public static Estimate ofIndependent(double value, List<Driver> drivers) {
        double variance = drivers.stream()
                .mapToDouble(driver -> driver.standardDeviation() * driver.standardDeviation())
                .sum();
        return new Estimate(value, Math.sqrt(variance), drivers);
    }

    /** This estimate in another unit: everything times a positive factor. */
    public Estimate times(double factor) {
        List<Driver> scaled = drivers.stream()
                .map(driver -> new Driver(driver.cause(), driver.standardDeviation() * Math.abs(factor)))
                .toList();
        return new Estimate(value * factor, standardDeviation * Math.abs(factor), scaled);
    }
}
