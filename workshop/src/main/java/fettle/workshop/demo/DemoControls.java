package fettle.workshop.demo;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Ratings;
import fettle.engine.control.servo.Servo;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepPoint;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** The invented club's servos, the trainer's set-up and the sweeps of its surfaces. */
final class DemoControls {
    static final String CRAFT = "Harrier";

    /** As it was set before the floats went on. */
    static final String BEFORE = """
            left aileron; wing; 1120 1500 1880; 45 mm; high 20/16, low 12/10; arm 10; horn 14; idle 9 mA; largest 0.31 A
            right aileron; wing; 1120 1500 1880; 45 mm; high 20/16, low 12/10; arm 10; horn 14; reversed
            elevator; wing; 1150 1510 1870; 52 mm; high 18/18, low 12/12; arm 10; horn 16
            rudder; wing; 1100 1500 1900; 60 mm; all 28/28; arm 12; horn 14
            """;

    /** As it was set after. */
    static final String AFTER = """
            left aileron; wing; 1120 1500 1840; 45 mm; high 20/16, low 12/10; arm 10; horn 14; pushrod aft 95 above 0 arm 90 horn 90; idle 9 mA; largest 0.34 A
            right aileron; wing; 1120 1500 1880; 45 mm; high 20/16, low 12/10; arm 10; horn 14; pushrod aft 95 above 0 arm 90 horn 84; reversed
            elevator; wing; 1150 1522 1870; 52 mm; high 20/18, low 12/12; arm 10; horn 16; pushrod aft 310 above 6 arm 88 horn 92
            rudder; wing; 1100 1500 1900; 60 mm; all 32/32; arm 12; horn 12; cables aft 420
            """;

    private static final double STEP = 10;
    private static final double LOWEST = 1050;
    private static final double HIGHEST = 1950;
    private static final double RUNNING = 0.19;
    private static final double NOISE = 0.012;
    private static final double AMPS_PER_MICRO = 0.0055;
    private static final double RESTLESS = 12.9898; // any number far from a part of a turn

    private DemoControls() {}

    static List<Servo> servos() {
        return List.of(
                servo("wing", 1500, 500, 333, List.of(rating(4.8, 4.6, 0.14, 1.3), rating(6.0, 5.6, 0.11, 1.7))),
                servo("tail", 760, 250, 560, List.of(rating(6.0, 4.2, 0.05, 2.4), rating(7.4, 5.0, 0.04, 3.0))));
    }

    /** A sweep up and down of a surface that binds beyond a pulse [µs]. */
    static Sweep sweep(double bindsBeyond) {
        List<SweepPoint> points = new ArrayList<>();
        int steps = (int) ((HIGHEST - LOWEST) / STEP);
        for (int at = 0; at <= 2 * steps; at++) {
            double micros = at <= steps ? LOWEST + STEP * at : HIGHEST - STEP * (at - steps);
            double amps =
                    RUNNING + NOISE * Math.sin(RESTLESS * at * at) + AMPS_PER_MICRO * Math.max(0, micros - bindsBeyond);
            points.add(new SweepPoint(TradeUnit.MICROSECOND.toSi(micros), amps));
        }
        return new Sweep(points, 0.009, 1.7);
    }

    private static Servo servo(String name, double centre, double span, double frame, List<Rating> ratings) {
        return new Servo(
                name,
                new PulseScale(
                        TradeUnit.MICROSECOND.toSi(centre), TradeUnit.DEGREE.toSi(0.1) / TradeUnit.MICROSECOND.toSi(1)),
                TradeUnit.MICROSECOND.toSi(span),
                frame,
                TradeUnit.MICROSECOND.toSi(3),
                new Ratings(ratings));
    }

    private static Rating rating(double volts, double torque, double secondsForSixty, double stallAmps) {
        return new Rating(
                volts,
                TradeUnit.KILOGRAM_FORCE_CENTIMETRE.toSi(torque),
                Rating.radiansPerSecond(secondsForSixty),
                0.009,
                0.28,
                stallAmps);
    }
}
