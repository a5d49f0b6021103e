package fettle.workshop;

import fettle.engine.control.servo.PulseScale;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Ratings;
import fettle.engine.control.servo.Servo;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A servo as typed by a person. Ratings are one a line or separated by semicolons:
 * {@code 6V 5.5kg·cm 0.12s idle 8mA moving 0.25A stall 1.6A}.
 *
 * @param turn angle for 100 µs; negative if it turns the other way
 */
public record ServoForm(
        String name, String centre, String turn, String span, String frame, String deadBand, String ratings) {
    private static final Map<String, String> FIELD_OF =
            Map.of("slope", "turn", "halfSpan", "span", "fastestFrame", "frame");
    private static final double PULSE_OF_TURN = TradeUnit.MICROSECOND.toSi(100);
    private static final Rating ANY_RATING = new Rating(6, 0.5, null, null, null, null);

    /** The servo, or {@link fettle.engine.units.InputException} with every fault, each at its field's name here. */
    public Servo toServo() {
        TypedFields fields = new TypedFields();
        double middle = fields.needed(
                "centre", "centre pulse", usual(centre, "1500 µs"), Measure.PULSE, TradeUnit.MICROSECOND, 1500e-6);
        double angle =
                fields.needed("turn", "angle for 100 µs", usual(turn, "10°"), Measure.ANGLE, TradeUnit.DEGREE, 0.17);
        double half = fields.needed(
                "span", "pulse span each side", usual(span, "500 µs"), Measure.PULSE, TradeUnit.MICROSECOND, 5e-4);
        double fastest = fields.needed(
                "frame", "fastest frame rate", usual(frame, "50 Hz"), Measure.FREQUENCY, TradeUnit.HERTZ, 50);
        double dead = fields.needed(
                "deadBand", "dead band", usual(deadBand, "5 µs"), Measure.PULSE, TradeUnit.MICROSECOND, 5e-6);
        List<Rating> known = ratings(fields);
        return fields.make(
                () -> new Servo(
                        name.strip(),
                        new PulseScale(middle, angle / PULSE_OF_TURN),
                        half,
                        fastest,
                        dead,
                        new Ratings(known)),
                FIELD_OF);
    }

    /** A servo as a person would type it. */
    public static ServoForm of(Servo servo) {
        return new ServoForm(
                servo.name(),
                QuantityText.write(servo.scale().centreSeconds(), TradeUnit.MICROSECOND),
                QuantityText.write(servo.scale().radiansPerPulseSecond() * PULSE_OF_TURN, TradeUnit.DEGREE),
                QuantityText.write(servo.halfSpanSeconds(), TradeUnit.MICROSECOND),
                QuantityText.write(servo.fastestFrameHertz(), TradeUnit.HERTZ),
                QuantityText.write(servo.deadBandSeconds(), TradeUnit.MICROSECOND),
                servo.ratings().rising().stream().map(RatingText::write).collect(Collectors.joining("\n")));
    }

    private static String usual(String typed, String instead) {
        return typed.isBlank() ? instead : typed;
    }

    private List<Rating> ratings(TypedFields fields) {
        List<Rating> known = new ArrayList<>();
        for (String written : ratings.split("[;\n]")) {
            if (!written.isBlank()) {
                known.add(fields.read("ratings", () -> RatingText.parse(written), ANY_RATING));
            }
        }
        return known;
    }
}
