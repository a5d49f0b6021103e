package fettle.engine.control.servo;

import fettle.engine.units.TradeUnit;
import java.util.List;

/** Invented servos for tests. */
public final class Servos {
    private Servos() {}

    /** A digital servo around 1500 µs with data at 4.8, 6.0 and 7.4 V. */
    public static Servo wing() {
        return new Servo(
                "wing servo",
                new PulseScale(1500e-6, TradeUnit.DEGREE.toSi(0.1) / 1e-6),
                600e-6,
                333,
                3e-6,
                new Ratings(List.of(
                        rating(6.0, 6.0, 0.12, 1.8), rating(4.8, 5.0, 0.15, 1.4), rating(7.4, 7.0, 0.10, 2.4))));
    }

    /** A narrow-pulse tail servo around 760 µs. */
    public static Servo tail() {
        return new Servo(
                "tail servo",
                new PulseScale(760e-6, TradeUnit.DEGREE.toSi(0.2) / 1e-6),
                250e-6,
                560,
                2e-6,
                new Ratings(List.of(rating(6.0, 4.0, 0.05, 2.5))));
    }

    private static Rating rating(double volts, double kilogramCentimetres, double secondsForSixty, double stallAmps) {
        return new Rating(
                volts,
                TradeUnit.KILOGRAM_FORCE_CENTIMETRE.toSi(kilogramCentimetres),
                Rating.radiansPerSecond(secondsForSixty),
                0.01,
                0.3,
                stallAmps);
    }
}
