package fettle.workshop.worksheet;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TravelCurve;
import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.control.load.LoadedServo;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.Workshop;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A linkage over its whole travel, microsecond by microsecond, for drawing it.
 *
 * @param drive servo, linkage and surface
 * @param travel from the lowest pulse to the highest
 * @param load what loads the surface through the linkage; {@code null} where nothing was typed
 * @param stallNewtonMetres stall torque at the voltage that is left [N·m]; {@code null} if not typed
 */
public record LinkageStudy(
        SurfaceDrive drive,
        TravelCurve travel,
        @Nullable LoadedServo load,
        @Nullable Double stallNewtonMetres) {
    private static final double ONE = TradeUnit.MICROSECOND.toSi(1);

    private static final List<WorksheetField> FIELDS = Stream.of(
                    LinkageFields.with(
                            WorksheetField.line("low", "Lowest pulse", "In µs.", "1100 µs"),
                            WorksheetField.line("high", "Highest pulse", "In µs.", "1900 µs")),
                    LoadFields.ALL,
                    List.of(WorksheetField.line(
                            "torque", "Stall torque", "At the voltage that is left; may be left out.", "")))
            .flatMap(List::stream)
            .toList();

    /** What it asks for. */
    public static List<WorksheetField> fields() {
        return List.copyOf(FIELDS);
    }

    /**
     * Reads what was typed, by key; what is missing stands for its usual value.
     *
     * @throws fettle.engine.units.InputException with every fault, each at its field
     */
    public static LinkageStudy of(Map<String, String> words) {
        Typed typed = new Typed(words, FIELDS);
        double low = LinkageFields.pulse(typed, "low");
        double high = LinkageFields.pulse(typed, "high");
        double chord = LinkageFields.length(typed, "chord");
        Optional<LoadedServo> load = LoadFields.load(typed, chord);
        OptionalDouble stall = typed.optional("torque", Measure.TORQUE, TradeUnit.KILOGRAM_FORCE_CENTIMETRE);
        SurfaceDrive drive = LinkageFields.drive(typed);
        return typed.make(() -> new LinkageStudy(
                drive,
                drive.curve(low, high, (int) Math.max(1, Math.round((high - low) / ONE))),
                load.orElse(null),
                stall.isEmpty() ? null : Double.valueOf(stall.getAsDouble())));
    }

    /**
     * The fields as a craft's latest sheet has them for one surface, the rest at their usual values; empty if that surface
     * has no linkage there. A servo that is not registered turns as usual.
     *
     * @throws fettle.workshop.UnknownNameException if there is no such craft
     */
    public static Optional<Map<String, String>> typed(Workshop workshop, String craft, String surface) {
        return workshop.setUps()
                .surfaceIfAny(craft, surface)
                .flatMap(setting -> SheetWords.of(setting, workshop.servos().list()))
                .map(words -> {
                    Map<String, String> typed =
                            FIELDS.stream().collect(Collectors.toMap(WorksheetField::key, WorksheetField::usual));
                    typed.putAll(words);
                    return typed;
                });
    }

    /** The rods or cables that are drawn; none for a torque rod. */
    public List<FourBar> rods() {
        if (drive.linkage() instanceof PullPull cables) {
            return List.of(cables.first(), cables.second());
        }
        return drive.linkage() instanceof FourBar bar ? List.of(bar) : List.of();
    }

    /** Servo torque to design for at a point [N·m]; empty without a load. */
    public OptionalDouble designNewtonMetres(TravelPoint point) {
        return load == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(load.designNewtonMetres(
                        point.position().surfaceRadians(), point.position().ratio()));
    }
}
