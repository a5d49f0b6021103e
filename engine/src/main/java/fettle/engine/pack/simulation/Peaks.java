package fettle.engine.pack.simulation;

/** Extremes watched at every step. Not thread-safe. */
final class Peaks {
    private final double[] value = {
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY
    };
    private final double[] seconds = new double[value.length];

    void watch(Moment now) {
        double at = now.seconds();
        low(0, now.volts(), at);
        low(1, -now.volts(), at);
        low(2, now.lowestCellVolts(), at);
        low(3, -now.highestCellVolts(), at);
        low(4, -now.hottestKelvins(), at);
        low(5, -Math.abs(now.amps()), at);
    }

    private void low(int which, double candidate, double at) {
        if (candidate < value[which]) {
            value[which] = candidate;
            seconds[which] = at;
        }
    }

    Peak lowestVolts() {
        return new Peak(value[0], seconds[0]);
    }

    Peak highestVolts() {
        return new Peak(-value[1], seconds[1]);
    }

    Peak lowestCellVolts() {
        return new Peak(value[2], seconds[2]);
    }

    Peak highestCellVolts() {
        return new Peak(-value[3], seconds[3]);
    }

    Peak hottestKelvins() {
        return new Peak(-value[4], seconds[4]);
    }

    Peak largestAmps() {
        return new Peak(-value[5], seconds[5]);
    }
}
