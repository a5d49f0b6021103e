package fettle.engine.control.linkage;

import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How far a linkage may travel.
 *
 * @param negative nearest limit at negative servo angles, if there is one
 * @param positive nearest limit at positive servo angles, if there is one
 */
public record TravelRange(
        @Nullable TravelLimit negative, @Nullable TravelLimit positive) {
    static TravelRange of(List<TravelLimit> limits) {
        Comparator<TravelLimit> nearest = Comparator.comparingDouble(limit -> Math.abs(limit.servoRadians()));
        return new TravelRange(
                limits.stream()
                        .filter(limit -> limit.servoRadians() < 0)
                        .min(nearest)
                        .orElse(null),
                limits.stream()
                        .filter(limit -> limit.servoRadians() >= 0)
                        .min(nearest)
                        .orElse(null));
    }

    /** The limit on the side of a servo angle. */
    public Optional<TravelLimit> ahead(double servoRadians) {
        return Optional.ofNullable(servoRadians < 0 ? negative : positive);
    }

    /** Servo angle left before the limit on that side [rad]; infinite where there is none, negative past it. */
    public double marginRadians(double servoRadians) {
        return ahead(servoRadians)
                .map(limit -> Math.abs(limit.servoRadians()) - Math.abs(servoRadians))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Refuses a servo angle at or past a limit, saying how far past. */
    public void requireInside(String field, double servoRadians) {
        if (marginRadians(servoRadians) > 0) {
            return;
        }
        TravelLimit limit = ahead(servoRadians).orElseThrow();
        throw new InputException(
                field,
                "servo angle " + TradeUnit.DEGREE.print(servoRadians, 2) + " is "
                        + TradeUnit.DEGREE.print(-marginRadians(servoRadians), 2) + " past "
                        + TradeUnit.DEGREE.print(limit.servoRadians(), 2) + ", where "
                        + limit.alignment().label() + " and "
                        + limit.alignment().consequence()
                        + ". Take less travel, a shorter servo arm or a longer horn.");
    }
}
