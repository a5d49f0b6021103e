package fettle.cli;

import static fettle.cli.KitFields.or;

import fettle.engine.control.servo.Servo;
import fettle.workshop.ServoForm;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that describe a servo. A mixin. */
final class ServoFields implements KitFields<Servo> {
    private static final ServoForm EMPTY = new ServoForm("", "", "", "", "", "", "");

    @Option(names = "--centre", paramLabel = "PULSE", description = "Its centre, usually 1500µs or 1520µs.")
    private @Nullable String centre;

    @Option(names = "--turn", paramLabel = "ANGLE", description = "Angle for 100 µs, usually 10°; measure it.")
    private @Nullable String turn;

    @Option(names = "--span", paramLabel = "PULSE", description = "From its centre to its stop, usually 500µs.")
    private @Nullable String span;

    @Option(names = "--frame", paramLabel = "RATE", description = "Fastest frame rate it takes, e.g. 333Hz.")
    private @Nullable String frame;

    @Option(names = "--dead-band", paramLabel = "PULSE", description = "Change it ignores, usually 2 to 5µs.")
    private @Nullable String deadBand;

    @Option(
            names = "--ratings",
            paramLabel = "RATINGS",
            description = "Its data by voltage, with semicolons: \"4.8V 4.5kgcm 0.15s; 6V 5.5kgcm 0.12s stall 1.6A\".")
    private @Nullable String ratings;

    @Override
    public Servo made(String name) {
        return over(EMPTY, name).toServo();
    }

    @Override
    public Servo changed(Servo present, String name) {
        return over(ServoForm.of(present), name).toServo();
    }

    private ServoForm over(ServoForm was, String name) {
        return new ServoForm(
                name,
                or(centre, was.centre()),
                or(turn, was.turn()),
                or(span, was.span()),
                or(frame, was.frame()),
                or(deadBand, was.deadBand()),
                or(ratings, was.ratings()));
    }
}
