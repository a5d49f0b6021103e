package fettle.engine.control.linkage;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Fault;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A surface whose angles were measured at some pulses: straight lines between them, nothing beyond.
 *
 * <p>Leaves out: how the true travel bends between two readings, and the meter's own error; readings every 100 µs keep the
 * bend of a usual linkage below a quarter of a degree.
 *
 * @param rising readings, sorted here by pulse, at least three, the angle rising or falling throughout
 * @param chordMetres from hinge line to trailing edge [m], 2 mm … 2 m
 */
public record MeasuredTravel(List<Reading> rising, double chordMetres) implements SurfaceMotion {
    /** Fewest readings that show a bend. */
    private static final int LEAST = 3;

    /**
     * One reading.
     *
     * @param pulseSeconds pulse [s], 500 … 2500 µs
     * @param surfaceRadians surface angle there [rad], up positive
     */
    public record Reading(double pulseSeconds, double surfaceRadians) {}

    public MeasuredTravel {
        rising = rising.stream()
                .sorted(Comparator.comparingDouble(Reading::pulseSeconds))
                .toList();
        Faults faults = new Faults();
        faults.range("chord", "chord of the surface", chordMetres, TradeUnit.MILLIMETRE, 2, 2000, "Hinge to edge.");
        for (Reading reading : rising) {
            PulseScale.checkPulse(faults, "table", "pulse", reading.pulseSeconds());
            faults.range("table", "angle", reading.surfaceRadians(), TradeUnit.DEGREE, -90, 90, "Give degrees.");
        }
        faults.refuse();
        if (rising.size() < LEAST) {
            throw new InputException(
                    "table",
                    rising.size() + " readings of pulse and angle; " + LEAST
                            + " or more are needed. Measure at both ends" + " and the centre at least.");
        }
        refuseTurns(rising);
    }

    private static void refuseTurns(List<Reading> rising) {
        double way = Math.signum(
                rising.get(rising.size() - 1).surfaceRadians() - rising.get(0).surfaceRadians());
        List<Fault> turns = IntStream.range(1, rising.size())
                .filter(at -> !(way
                                        * (rising.get(at).surfaceRadians()
                                                - rising.get(at - 1).surfaceRadians())
                                > 0
                        && rising.get(at).pulseSeconds() > rising.get(at - 1).pulseSeconds()))
                .mapToObj(at -> new Fault(
                        "table",
                        "the angle does not go one way from " + written(rising.get(at - 1)) + " to "
                                + written(rising.get(at)) + ". Measure those two again, each pulse once."))
                .toList();
        if (!turns.isEmpty()) {
            throw new InputException(turns);
        }
    }

    @Override
    public double surfaceRadians(double pulseSeconds) {
        Piece piece = piece(pulseSeconds, Reading::pulseSeconds);
        if (piece == null) {
            throw new InputException(
                    "pulse",
                    "pulse " + TradeUnit.MICROSECOND.print(pulseSeconds, 0) + " lies outside the readings, " + span()
                            + ". Measure further, or ask for less travel.");
        }
        return piece.from().surfaceRadians() * (1 - piece.part()) + piece.to().surfaceRadians() * piece.part();
    }

    @Override
    public double pulseSeconds(double surfaceRadians) {
        Piece piece = piece(surfaceRadians, Reading::surfaceRadians);
        if (piece == null) {
            throw new InputException(
                    "surfaceAngle",
                    "surface angle " + TradeUnit.DEGREE.print(surfaceRadians, 1) + " lies outside the readings, "
                            + span() + ". Ask for less throw, or measure further.");
        }
        return piece.from().pulseSeconds() * (1 - piece.part()) + piece.to().pulseSeconds() * piece.part();
    }

    /** Two neighbouring readings and how far between them a place lies, 0 … 1. */
    private record Piece(Reading from, Reading to, double part) {}

    private @Nullable Piece piece(double place, ToDoubleFunction<Reading> along) {
        for (int at = 1; at < rising.size(); at++) {
            double from = along.applyAsDouble(rising.get(at - 1));
            double to = along.applyAsDouble(rising.get(at));
            double part = (place - from) / (to - from);
            if (part >= 0 && part <= 1) {
                return new Piece(rising.get(at - 1), rising.get(at), part);
            }
        }
        return null;
    }

    private String span() {
        return written(rising.get(0)) + " to " + written(rising.get(rising.size() - 1));
    }

    private static String written(Reading reading) {
        return TradeUnit.MICROSECOND.print(reading.pulseSeconds(), 0) + " ("
                + TradeUnit.DEGREE.print(reading.surfaceRadians(), 1) + ")";
    }
}
