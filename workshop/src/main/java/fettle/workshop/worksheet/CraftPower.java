package fettle.workshop.worksheet;

import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Servo;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepAnalysis;
import fettle.engine.control.sweep.SweepResult;
import fettle.engine.supply.receiver.Basis;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.KeptSweep;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Servo and receiver power of a craft's latest sheet: currents from its sweeps first, from its servos' data second. */
public final class CraftPower {
    private static final String SERVOS = "servos";
    private static final String LEAD = "lead";

    /** An ordinary servo's currents where nothing is known [A]; from memory. */
    private static final double USUAL_IDLE = 0.01;

    private static final double USUAL_MOVING = 0.25;
    private static final double USUAL_STALL = 1.2;

    /** No current of a servo is known more finely. */
    private static final double TENTHS_OF_MILLIAMPERES = 1e4;

    private static final List<WorksheetField> FIELDS = Stream.concat(
                    Stream.of(WorksheetField.line(LEAD, "Lead to each servo", "Length; AWG.", "300 mm; 26")),
                    ServoPowerSheet.WORKSHEET.fields().stream()
                            .filter(field -> !field.key().equals(SERVOS)))
            .toList();

    private final List<SurfaceSetting> surfaces;
    private final List<KeptSweep> latestFirst;
    private final List<Registered<Servo>> servos;

    private CraftPower(Workshop workshop, String craft) {
        this.surfaces = workshop.setUps().latest(craft).sheet().surfaces();
        this.latestFirst = workshop.setUps().sweeps(craft, "");
        this.servos = workshop.servos().list();
    }

    /** What it asks for. */
    public static List<WorksheetField> fields() {
        return List.copyOf(FIELDS);
    }

    /**
     * The worksheet of one craft.
     *
     * @throws fettle.workshop.UnknownNameException if there is no such craft or it has no sheet
     */
    public static Worksheet of(Workshop workshop, String craft) {
        CraftPower power = new CraftPower(workshop, craft);
        return new Worksheet(
                "power",
                "Servo and receiver power of " + craft,
                ServoPowerSheet.WORKSHEET.question(),
                FIELDS,
                power::answer);
    }

    private Sheet answer(Typed typed) {
        double volts = typed.quantity("output", Measure.VOLTAGE, TradeUnit.VOLT, 5);
        String lead = typed.word(LEAD);
        String lines =
                surfaces.stream().map(setting -> line(setting, volts, lead)).collect(Collectors.joining("\n"));
        Sheet sheet = ServoPowerSheet.WORKSHEET.answer(typed.with(SERVOS, lines));
        List<String> notes = new ArrayList<>(sheet.notes());
        lines.lines().forEach(line -> notes.add("Taken: " + line + "."));
        return new Sheet(sheet.verdict(), sheet.figures(), notes, sheet.caution(), sheet.working());
    }

    /** One servo as the power worksheet takes it. */
    private String line(SurfaceSetting setting, double volts, String lead) {
        Optional<Rating> data = rating(setting.servo(), volts);
        Optional<Sweep> sweep = latestFirst.stream()
                .filter(kept -> kept.sweep().surface().equalsIgnoreCase(setting.surface()))
                .findFirst()
                .map(kept -> kept.sweep().sweep());
        Optional<SweepResult> swept = sweep.map(SweepAnalysis::of);
        Double sweptIdle =
                swept.map(SweepResult::idleAmps).map(idle -> idle.value()).orElse(setting.idleAmps());
        double idle = first(sweptIdle, figure(data, Rating::idleAmps), USUAL_IDLE);
        double moving = Math.max(
                idle,
                first(
                        swept.map(result -> result.runningAmps().value()).orElse(null),
                        figure(data, Rating::movingAmps),
                        USUAL_MOVING));
        double largest = swept.map(result -> result.ends().largestAmps()).orElse(moving);
        double stall = Math.max(
                Math.max(moving, largest),
                first(
                        figure(data, Rating::stallAmps),
                        sweep.map(Sweep::stallAmps).orElse(null),
                        USUAL_STALL));
        Basis basis = swept.isPresent() ? Basis.MEASURED : data.isPresent() ? Basis.DATA : Basis.ASSUMED;
        return setting.surface() + "; " + amps(idle) + "; " + amps(moving) + "; " + amps(stall) + "; " + lead + "; "
                + basis.name().toLowerCase(Locale.ROOT);
    }

    private Optional<Rating> rating(String name, double volts) {
        return servos.stream()
                .filter(servo -> servo.name().equalsIgnoreCase(name))
                .map(Registered::item)
                .map(Servo::ratings)
                .filter(ratings -> ratings.covers(volts))
                .map(ratings -> ratings.at(volts))
                .findFirst();
    }

    private static @Nullable Double figure(Optional<Rating> data, Function<Rating, @Nullable Double> which) {
        return data.map(which::apply).orElse(null);
    }

    private static double first(@Nullable Double best, @Nullable Double next, double usual) {
        return best != null ? best : next != null ? next : usual;
    }

    private static String amps(double amps) {
        return QuantityText.write(Math.rint(amps * TENTHS_OF_MILLIAMPERES) / TENTHS_OF_MILLIAMPERES, TradeUnit.AMPERE);
    }
}
