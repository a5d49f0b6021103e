package fettle.book.record;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Ratings;
import fettle.engine.control.servo.Servo;

/** Servos with their data by voltage. */
public final class ServoShape implements Shape<Servo> {
    private static final String RATINGS = "servo_rating";

    @Override
    public Kind kind() {
        return Kind.SERVO;
    }

    @Override
    public Row toRow(Servo servo, References references) {
        return Row.empty()
                .with("name", servo.name())
                .with("centre_seconds", servo.scale().centreSeconds())
                .with("radians_per_pulse_second", servo.scale().radiansPerPulseSecond())
                .with("half_span_seconds", servo.halfSpanSeconds())
                .with("fastest_frame_hertz", servo.fastestFrameHertz())
                .with("dead_band_seconds", servo.deadBandSeconds())
                .withParts(
                        RATINGS,
                        servo.ratings().rising().stream()
                                .map(ServoShape::ratingRow)
                                .toList());
    }

    @Override
    public Servo fromRow(Row row, References references) {
        return new Servo(
                row.text("name"),
                new PulseScale(row.real("centre_seconds"), row.real("radians_per_pulse_second")),
                row.real("half_span_seconds"),
                row.real("fastest_frame_hertz"),
                row.real("dead_band_seconds"),
                new Ratings(row.parts(RATINGS).stream().map(ServoShape::rating).toList()));
    }

    private static Row ratingRow(Rating rating) {
        return Row.empty()
                .with("volts", rating.volts())
                .with("stall_newton_metres", rating.stallNewtonMetres())
                .with("radians_per_second", rating.radiansPerSecond())
                .with("idle_amps", rating.idleAmps())
                .with("moving_amps", rating.movingAmps())
                .with("stall_amps", rating.stallAmps());
    }

    private static Rating rating(Row row) {
        return new Rating(
                row.real("volts"),
                row.real("stall_newton_metres"),
                row.realOrNull("radians_per_second"),
                row.realOrNull("idle_amps"),
                row.realOrNull("moving_amps"),
                row.realOrNull("stall_amps"));
    }
}
