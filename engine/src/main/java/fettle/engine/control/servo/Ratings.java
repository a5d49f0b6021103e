package fettle.engine.control.servo;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A servo's data by voltage: straight lines between the voltages stated, nothing beyond them.
 *
 * <p>A servo driven above its highest stated voltage may burn, and below the lowest its electronics may reset before its
 * torque fades, so neither side has an answer here.
 *
 * @param rising ratings, sorted here by voltage, at least one
 */
public record Ratings(List<Rating> rising) {
    /** Voltages this near to a stated one are taken as it [V]: resolution of a bench meter. */
    private static final double SAME_VOLTS = 0.005;

    public Ratings {
        rising = rising.stream()
                .sorted(Comparator.comparingDouble(Rating::volts))
                .toList();
        if (rising.isEmpty()) {
            throw new InputException("ratings", "no voltage is stated. Give at least one line of the servo's sheet.");
        }
        for (int next = 1; next < rising.size(); next++) {
            if (rising.get(next).volts() - rising.get(next - 1).volts() <= SAME_VOLTS) {
                throw new InputException(
                        "ratings",
                        TradeUnit.VOLT.print(rising.get(next).volts(), 2)
                                + " is stated twice. Keep one line for each voltage.");
            }
        }
    }

    /** Whether a voltage [V] lies between the lowest and the highest stated one. */
    public boolean covers(double volts) {
        return volts >= lowestVolts() - SAME_VOLTS && volts <= highestVolts() + SAME_VOLTS;
    }

    public double lowestVolts() {
        return rising.get(0).volts();
    }

    public double highestVolts() {
        return rising.get(rising.size() - 1).volts();
    }

    /**
     * The rating at a voltage [V]; a figure that either neighbour lacks is lacking.
     *
     * @throws InputException outside the voltages stated
     */
    public Rating at(double volts) {
        if (!covers(volts)) {
            throw new InputException(
                    "volts",
                    "servo voltage is " + TradeUnit.VOLT.print(volts, 2) + "; its data covers "
                            + TradeUnit.VOLT.print(lowestVolts(), 2) + " to "
                            + TradeUnit.VOLT.print(highestVolts(), 2)
                            + ". Look up or measure a line at that voltage; nothing is guessed beyond the data.");
        }
        double inside = Math.min(Math.max(volts, lowestVolts()), highestVolts());
        Rating above = rising.stream()
                .filter(rating -> rating.volts() >= inside)
                .findFirst()
                .orElseThrow();
        Rating below = rising.stream()
                .filter(rating -> rating.volts() <= inside)
                .reduce((lower, higher) -> higher)
                .orElseThrow();
        return between(below, above, inside);
    }

    private static Rating between(Rating below, Rating above, double volts) {
        if (below.equals(above)) {
            return below;
        }
        double part = (volts - below.volts()) / (above.volts() - below.volts());
        return new Rating(
                volts,
                below.stallNewtonMetres() + part * (above.stallNewtonMetres() - below.stallNewtonMetres()),
                between(below, above, part, Rating::radiansPerSecond),
                between(below, above, part, Rating::idleAmps),
                between(below, above, part, Rating::movingAmps),
                between(below, above, part, Rating::stallAmps));
    }

    private static @Nullable Double between(
            Rating below, Rating above, double part, Function<Rating, @Nullable Double> figure) {
        Double low = figure.apply(below);
        Double high = figure.apply(above);
        return low == null || high == null ? null : Double.valueOf(low + part * (high - low));
    }
}
