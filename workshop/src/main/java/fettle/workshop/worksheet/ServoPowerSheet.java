package fettle.workshop.worksheet;

import fettle.engine.control.Caution;
import fettle.engine.supply.receiver.PowerAssessment;
import fettle.engine.supply.receiver.PowerBudget;
import fettle.engine.supply.receiver.ReceiverPack;
import fettle.engine.supply.receiver.ReceiverSupply;
import fettle.engine.supply.receiver.Regulator;
import fettle.engine.supply.receiver.Scenario;
import fettle.engine.supply.receiver.ScenarioPower;
import fettle.engine.supply.receiver.ServoDraw;
import fettle.engine.supply.wire.Lead;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Whether BEC or receiver pack bears the servos. */
final class ServoPowerSheet {
    /** Uncertainty of a capacity read off a label, as a share; from memory. */
    private static final double LABEL = 0.1;

    static final Worksheet WORKSHEET = new Worksheet(
            "servo-power",
            "Servo and receiver power",
            "Does the BEC or receiver pack bear the servos, and what helps most if not?",
            List.of(
                    WorksheetField.lines(
                            "servos",
                            "Servos",
                            "One a line: name; at rest; moving; stalled; lead length; AWG; measured, data or assumed."
                                    + " E.g. rudder; 10 mA; 0.3 A; 1.5 A; 600 mm; 26; data"),
                    WorksheetField.choice(
                            "kind",
                            "Supply",
                            "What feeds the receiver.",
                            "switching",
                            List.of("switching", "linear", "direct")),
                    WorksheetField.line("input", "Battery, full", "Before the BEC, in V.", ""),
                    WorksheetField.line("output", "Voltage held", "Of the BEC or receiver pack, in V.", ""),
                    WorksheetField.line("inner", "Inner resistance", "Of a direct pack, in mΩ.", "0 mΩ"),
                    WorksheetField.line("continuous", "Continuous current", "In A.", ""),
                    WorksheetField.line("peak", "Peak current", "In A.", ""),
                    WorksheetField.line("feed", "Feed lead", "Length; AWG. E.g. 150 mm; 20", "150 mm; 22"),
                    WorksheetField.line("contacts", "Contacts of the feed", "Drop over current, in mΩ.", "10 mΩ"),
                    WorksheetField.line("receiver", "Receiver current", "With gyro and telemetry.", "100 mA"),
                    WorksheetField.line("reset", "Receiver resets at", "In V.", "3.5 V"),
                    WorksheetField.line("capacity", "Receiver pack", "Capacity; left out where a BEC feeds.", ""),
                    WorksheetField.line("reserve", "Reserve", "Share kept back, in %.", "40 %"),
                    WorksheetField.line("hard", "Hard flying", "Share of the time, in %.", "20 %")),
            ServoPowerSheet::answer);

    private ServoPowerSheet() {}

    private static Sheet answer(Typed typed) {
        double contacts = typed.quantity("contacts", Measure.RESISTANCE, TradeUnit.MILLIOHM, 0);
        List<ServoDraw> servos =
                typed.read("servos", () -> ServoLines.servos(typed.word("servos")), List.<ServoDraw>of());
        Lead feed = typed.read(
                "feed", () -> ServoLines.lead(typed.word("feed"), contacts), ServoLines.lead("150 mm; 22", 0));
        Regulator.Kind kind = typed.read("kind", () -> kind(typed.word("kind")), Regulator.Kind.SWITCHING);
        double output = typed.quantity("output", Measure.VOLTAGE, TradeUnit.VOLT, 5);
        double input =
                kind == Regulator.Kind.DIRECT ? output : typed.quantity("input", Measure.VOLTAGE, TradeUnit.VOLT, 12);
        double inner = typed.quantity("inner", Measure.RESISTANCE, TradeUnit.MILLIOHM, 0);
        double continuous = typed.quantity("continuous", Measure.CURRENT, TradeUnit.AMPERE, 1);
        double peak = typed.quantity("peak", Measure.CURRENT, TradeUnit.AMPERE, 1);
        double receiver = typed.quantity("receiver", Measure.CURRENT, TradeUnit.AMPERE, 0.1);
        double reset = typed.quantity("reset", Measure.VOLTAGE, TradeUnit.VOLT, 3.5);
        OptionalDouble capacity = typed.optional("capacity", Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR);
        double reserve = typed.quantity("reserve", Measure.FRACTION, TradeUnit.PERCENT, 0.4);
        double hard = typed.quantity("hard", Measure.FRACTION, TradeUnit.PERCENT, 0.2);
        return typed.make(() -> {
            ReceiverSupply supply = new ReceiverSupply(
                    new Regulator(kind, input, output, inner, continuous, peak), feed, servos, receiver, reset);
            return sheet(PowerAssessment.of(supply), hours(supply, capacity, reserve, hard));
        });
    }

    private static Regulator.Kind kind(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "switching" -> Regulator.Kind.SWITCHING;
            case "linear" -> Regulator.Kind.LINEAR;
            case "direct" -> Regulator.Kind.DIRECT;
            default ->
                throw new InputException(
                        "kind", "supply is \"" + word + "\"; expected one of switching, linear, direct.");
        };
    }

    private static List<Figure> hours(ReceiverSupply supply, OptionalDouble capacity, double reserve, double hard) {
        if (capacity.isEmpty()) {
            return List.of();
        }
        double label = capacity.getAsDouble();
        Estimate held = Estimate.ofIndependent(label, List.of(new Driver("capacity by its label", LABEL * label)));
        return List.of(Figure.of(
                "to_reserve",
                "Time to the reserve",
                new ReceiverPack(held, reserve, hard).seconds(supply),
                TradeUnit.HOUR,
                1));
    }

    private static Sheet sheet(PowerBudget budget, List<Figure> hours) {
        List<Figure> figures = new ArrayList<>();
        for (ScenarioPower power : budget.scenarios()) {
            String key = power.scenario().name().toLowerCase(Locale.ROOT);
            String label = power.scenario().label();
            figures.add(Figure.exact(key + "_amps", "Current, " + label, power.amps(), TradeUnit.AMPERE, 2));
            figures.add(
                    Figure.of(key + "_margin", "Above reset, " + label, power.resetMarginVolts(), TradeUnit.VOLT, 2));
            figures.add(Figure.exact(key + "_heat", "Heat in the BEC, " + label, power.heatWatts(), TradeUnit.WATT, 1));
        }
        figures.addAll(hours);
        List<String> notes = new ArrayList<>();
        budget.warnings().forEach(warning -> notes.add(ControlNotes.sentence(warning.statement(), warning.advice())));
        budget.improvements()
                .forEach(change -> notes.add(String.format(
                        Locale.ROOT,
                        "%s: %+.2f V with one servo stalled, %.0f %% less of the peak with all.",
                        capital(change.change()),
                        change.marginVolts(),
                        100 * change.peakShare())));
        return new Sheet(verdict(budget), figures, notes, ControlNotes.cautions(Caution.moving()), budget.working());
    }

    private static String verdict(PowerBudget budget) {
        ScenarioPower stalled = budget.of(Scenario.ONE_STALLED);
        String margin = TradeUnit.VOLT.print(stalled.resetMarginVolts(), 2) + " above reset with one servo stalled, "
                + TradeUnit.AMPERE.print(stalled.amps(), 1) + ".";
        return budget.warnings().isEmpty() ? "Passes: " + margin : "Falls short somewhere: " + margin;
    }

    private static String capital(String change) {
        return change.substring(0, 1).toUpperCase(Locale.ROOT) + change.substring(1);
    }
}
