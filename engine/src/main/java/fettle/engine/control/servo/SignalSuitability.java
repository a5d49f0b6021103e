package fettle.engine.control.servo;

import fettle.engine.control.Remark;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** Whether a signal suits a servo; the limits are the servo's own, from its sheet. */
public final class SignalSuitability {
    /** Offset of centres worth a word [s]: the two usual centres differ by this; common practice, no source. */
    private static final double CENTRE_OFFSET = TradeUnit.MICROSECOND.toSi(15);

    /** Rounding of pulses [s]. */
    private static final double SAME = TradeUnit.MICROSECOND.toSi(0.5);

    private SignalSuitability() {}

    /** What speaks against connecting them; the most harmful first, empty if nothing does. */
    public static List<Remark> of(Signal signal, Servo servo) {
        List<Remark> remarks = new ArrayList<>();
        double centre = signal.centreSeconds();
        if (centre < servo.lowestSeconds() - SAME || centre > servo.highestSeconds() + SAME) {
            remarks.add(drivenToTheStop(signal, servo));
        } else {
            offCentre(signal, servo, remarks);
            pastTheStops(signal, servo, remarks);
        }
        if (signal.lowSeconds() <= 0) {
            remarks.add(doesNotFit(signal));
        }
        if (signal.frameHertz() > servo.fastestFrameHertz() * (1 + 1e-9)) {
            remarks.add(tooFast(signal, servo));
        }
        return List.copyOf(remarks);
    }

    private static Remark drivenToTheStop(Signal signal, Servo servo) {
        return new Remark(
                "wrong-pulse-type",
                "a centre pulse of " + micros(signal.centreSeconds()) + " is outside the "
                        + micros(servo.lowestSeconds()) + " to " + micros(servo.highestSeconds()) + " of "
                        + servo.name() + ": it drives the servo to its stop and holds it stalled there",
                "Do not connect it. Set the channel to a centre of "
                        + micros(servo.scale().centreSeconds()) + " first, or use another servo.");
    }

    private static void offCentre(Signal signal, Servo servo, List<Remark> remarks) {
        double offset = signal.centreSeconds() - servo.scale().centreSeconds();
        if (Math.abs(offset) >= CENTRE_OFFSET) {
            remarks.add(new Remark(
                    "off-centre",
                    "the signal's centre is " + micros(Math.abs(offset)) + " from the servo's: the arm stands "
                            + TradeUnit.DEGREE.print(Math.abs(servo.scale().servoRadians(signal.centreSeconds())), 1)
                            + " off",
                    "Set the centre in the transmitter, then fit the arm square."));
        }
    }

    private static void pastTheStops(Signal signal, Servo servo, List<Remark> remarks) {
        double past = Math.max(
                servo.lowestSeconds() - signal.lowestSeconds(), signal.highestSeconds() - servo.highestSeconds());
        if (past > SAME) {
            remarks.add(new Remark(
                    "past-the-stop",
                    "the signal goes " + micros(past) + " past what " + servo.name()
                            + " follows; at its stop it draws stall current",
                    "Bring the end points in to " + micros(servo.lowestSeconds()) + " and "
                            + micros(servo.highestSeconds()) + "."));
        }
    }

    private static Remark doesNotFit(Signal signal) {
        return new Remark(
                "frame-too-short",
                "a pulse of " + micros(signal.highestSeconds()) + " does not fit into a frame of "
                        + micros(signal.frameSeconds()) + " (" + TradeUnit.HERTZ.print(signal.frameHertz(), 0) + ")",
                "Choose a slower frame rate.");
    }

    private static Remark tooFast(Signal signal, Servo servo) {
        return new Remark(
                "frame-too-fast",
                "frames come at " + TradeUnit.HERTZ.print(signal.frameHertz(), 0) + "; " + servo.name() + " takes "
                        + TradeUnit.HERTZ.print(servo.fastestFrameHertz(), 0)
                        + " at most and may run hot, jitter or fail above it",
                "Choose a slower frame rate for this channel.");
    }

    private static String micros(double seconds) {
        return TradeUnit.MICROSECOND.print(seconds, 0);
    }
}
