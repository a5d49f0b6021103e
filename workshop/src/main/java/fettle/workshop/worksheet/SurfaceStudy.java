package fettle.workshop.worksheet;

import fettle.engine.control.Remark;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TravelCurve;
import fettle.engine.control.linkage.TravelPoint;
import fettle.engine.control.load.LoadReport;
import fettle.engine.control.load.LoadedServo;
import fettle.engine.control.servo.Rating;
import fettle.engine.control.servo.Servo;
import fettle.engine.control.servo.Signal;
import fettle.engine.control.servo.SignalSuitability;
import fettle.engine.control.setup.Rate;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.control.sweep.SweepAnalysis;
import fettle.engine.control.sweep.UsableSpan;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import fettle.workshop.Workshop;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One surface of a craft's latest sheet: what its linkage makes of the end points, which pulses its throws need, whether
 * its signal suits the servo, and whether the servo bears the load at the voltage that is left.
 */
public final class SurfaceStudy {
    private static final int INTERVALS = 40;
    private static final List<WorksheetField> FIELDS = Stream.concat(
                    Stream.of(
                            WorksheetField.line("volts", "Voltage at the servo", "With the battery sagged.", "5 V"),
                            WorksheetField.line("frame", "Frame rate", "Of the channel.", "50 Hz")),
                    LoadFields.ALL.stream())
            .toList();

    private final SurfaceSetting setting;
    private final Servo servo;
    private final @Nullable UsableSpan span;

    private SurfaceStudy(SurfaceSetting setting, Servo servo, @Nullable UsableSpan span) {
        this.setting = setting;
        this.servo = servo;
        this.span = span;
    }

    /** What it asks for. */
    public static List<WorksheetField> fields() {
        return List.copyOf(FIELDS);
    }

    /**
     * The worksheet of one surface.
     *
     * @throws fettle.workshop.UnknownNameException if there is no such craft, sheet, surface or servo
     */
    public static Worksheet of(Workshop workshop, String craft, String surface) {
        SurfaceSetting setting = workshop.setUps().surface(craft, surface);
        Servo servo = workshop.servos().find(setting.servo()).item();
        Optional<UsableSpan> span = workshop.setUps()
                .latestSweep(craft, surface)
                .map(kept -> SweepAnalysis.of(kept.sweep().sweep()).span());
        SurfaceStudy study = new SurfaceStudy(setting, servo, span.orElse(null));
        return new Worksheet(
                "surface",
                "The " + setting.surface(),
                "What do its end points give, which pulses do its throws need, and does the servo bear the load?",
                FIELDS,
                study::answer);
    }

    private Sheet answer(Typed typed) {
        double volts = typed.quantity("volts", Measure.VOLTAGE, TradeUnit.VOLT, 5);
        double frame = typed.quantity("frame", Measure.FREQUENCY, TradeUnit.HERTZ, 50);
        Optional<LoadedServo> load = LoadFields.load(typed, setting.chordMetres());
        return typed.make(() -> {
            SurfaceDrive drive = setting.drive(servo.scale())
                    .orElseThrow(() -> new InputException(
                            "",
                            setting.surface() + " has no linkage on its sheet. Add it to the line of that surface, e.g."
                                    + " pushrod aft 80 above 0 arm 90 horn 90."));
            TravelCurve travel = drive.curve(setting.lowestSeconds(), setting.highestSeconds(), INTERVALS);
            Rating rating = servo.ratings().at(volts);
            LoadReport report =
                    load.map(made -> made.over(travel, servo.ratings(), volts)).orElse(null);
            return sheet(drive, travel, rating, report, frame);
        });
    }

    private Sheet sheet(
            SurfaceDrive drive, TravelCurve travel, Rating rating, @Nullable LoadReport load, double frame) {
        TravelPoint low = travel.points().get(0);
        TravelPoint high = travel.points().get(INTERVALS);
        List<Figure> figures = new ArrayList<>();
        end("low", "lower", low, figures);
        end("high", "upper", high, figures);
        List<String> outOfReach = new ArrayList<>();
        setting.rates().forEach(rate -> wanted(drive, rate, figures, outOfReach));
        if (Double.isFinite(travel.marginRadians())) {
            figures.add(Figure.exact(
                    "margin_to_limit", "Servo angle to a dead centre", travel.marginRadians(), TradeUnit.DEGREE, 1));
        }
        speed(rating, low, high, figures);
        if (load != null) {
            figures.add(Figure.exact(
                    "design_torque",
                    "Servo torque to design for",
                    load.heaviest().servoNewtonMetres(),
                    TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
                    2));
            figures.add(Figure.of(
                    "expected_torque",
                    "Servo torque to expect there",
                    load.heaviest().expectedServoNewtonMetres(),
                    TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
                    2));
            figures.add(Figure.exact(
                    "stall_torque",
                    "Stall torque at " + TradeUnit.VOLT.print(rating.volts(), 1),
                    load.stallNewtonMetres(),
                    TradeUnit.KILOGRAM_FORCE_CENTIMETRE,
                    2));
            figures.add(LinkageSheet.plain("torque_margin", "Stall torque over it", load.margin()));
        }
        return new Sheet(
                verdict(low, high, load),
                figures,
                notes(travel, load, frame, outOfReach),
                ControlNotes.cautions(travel.cautions()),
                working(travel, load));
    }

    private static Working working(TravelCurve travel, @Nullable LoadReport load) {
        List<Step> steps = new ArrayList<>(travel.working().steps());
        if (load != null) {
            steps.addAll(load.working().steps());
        }
        return Working.of(steps.toArray(Step[]::new));
    }

    private static void end(String key, String which, TravelPoint point, List<Figure> figures) {
        figures.add(Figure.exact(
                key + "_angle",
                "Surface at the " + which + " end point",
                point.position().surfaceRadians(),
                TradeUnit.DEGREE,
                1));
        figures.add(Figure.exact(key + "_edge", "Trailing edge there", point.edgeMetres(), TradeUnit.MILLIMETRE, 1));
    }

    /** Pulses for a rate's throws. */
    private static void wanted(SurfaceDrive drive, Rate rate, List<Figure> figures, List<String> outOfReach) {
        pulse(drive, rate.upRadians(), rate.name() + " up", figures, outOfReach);
        pulse(drive, -rate.downRadians(), rate.name() + " down", figures, outOfReach);
    }

    private static void pulse(
            SurfaceDrive drive, double surfaceRadians, String what, List<Figure> figures, List<String> outOfReach) {
        String key = "pulse_" + what.toLowerCase(Locale.ROOT).replaceAll("\\W+", "_");
        try {
            figures.add(Figure.exact(
                    key,
                    "Pulse for " + what + " (" + TradeUnit.DEGREE.print(Math.abs(surfaceRadians), 1) + ")",
                    drive.pulseSeconds(surfaceRadians),
                    TradeUnit.MICROSECOND,
                    1));
        } catch (InputException refused) {
            outOfReach.add(ControlNotes.sentence("throw " + what + " cannot be had", refused.getMessage()));
        }
    }

    private static void speed(Rating rating, TravelPoint low, TravelPoint high, List<Figure> figures) {
        Double speed = rating.radiansPerSecond();
        if (speed != null) {
            double turn =
                    Math.abs(high.position().servoRadians() - low.position().servoRadians());
            figures.add(Figure.exact("travel_time", "End to end without load", turn / speed, TradeUnit.SECOND, 2));
        }
    }

    private String verdict(TravelPoint low, TravelPoint high, @Nullable LoadReport load) {
        String travel = "Its end points take the " + setting.surface() + " from "
                + TradeUnit.DEGREE.print(low.position().surfaceRadians(), 1) + " to "
                + TradeUnit.DEGREE.print(high.position().surfaceRadians(), 1);
        return load == null
                ? travel + "."
                : travel
                        + String.format(
                                Locale.ROOT, "; the servo has %.1f times the torque to design for.", load.margin());
    }

    private List<String> notes(TravelCurve travel, @Nullable LoadReport load, double frame, List<String> outOfReach) {
        List<Remark> remarks = new ArrayList<>(travel.remarks());
        remarks.addAll(SignalSuitability.of(
                new Signal(setting.lowestSeconds(), setting.centreSeconds(), setting.highestSeconds(), frame), servo));
        if (load != null) {
            remarks.addAll(load.remarks());
        }
        List<String> notes = new ArrayList<>(outOfReach);
        notes.addAll(ControlNotes.of(remarks));
        if (span == null) {
            notes.add("No sweep of this surface is kept, so where it binds is not known.");
        } else if (setting.lowestSeconds() < span.lowestSeconds() || setting.highestSeconds() > span.highestSeconds()) {
            notes.add("An end point lies outside the span its latest sweep calls usable, "
                    + TradeUnit.MICROSECOND.print(span.lowestSeconds(), 0) + " to "
                    + TradeUnit.MICROSECOND.print(span.highestSeconds(), 0) + ". Bring it in.");
        }
        return notes;
    }
}
