package fettle.workshop.worksheet;

import fettle.engine.supply.field.Generator;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import fettle.workshop.worksheet.Sheet.Figure;
import java.util.List;

/** How long a generator's fuel lasts. */
final class GeneratorSheet {
    static final Worksheet WORKSHEET = new Worksheet(
            "generator",
            "Feed chargers from a generator",
            "How long does its fuel last at this load?",
            List.of(
                    WorksheetField.line("watts", "Continuous power", "Of the generator, in W.", ""),
                    WorksheetField.line("full", "One tank at full load", "As its maker states, in hours.", ""),
                    WorksheetField.line("quarter", "One tank at a quarter load", "As its maker states, in hours.", ""),
                    WorksheetField.line("load", "Load", "All chargers' input power together, in W.", ""),
                    WorksheetField.line("tank", "Fuel", "Share of the tank that is filled.", "100 %")),
            GeneratorSheet::answer);

    private GeneratorSheet() {}

    private static Sheet answer(Typed typed) {
        double watts = typed.quantity("watts", Measure.POWER, TradeUnit.WATT, 1000);
        double full = typed.quantity("full", Measure.DURATION, TradeUnit.HOUR, 3600);
        double quarter = typed.quantity("quarter", Measure.DURATION, TradeUnit.HOUR, 7200);
        double load = typed.quantity("load", Measure.POWER, TradeUnit.WATT, 100);
        double tank = typed.quantity("tank", Measure.FRACTION, TradeUnit.PERCENT, 1);
        return typed.make(() -> sheet(new Generator(watts, full, quarter, tank), load));
    }

    private static Sheet sheet(Generator generator, double load) {
        double seconds = generator.seconds(load);
        return new Sheet(
                "Lasts " + TradeUnit.HOUR.print(seconds, 1) + " at " + TradeUnit.WATT.print(load, 0) + ".",
                List.of(
                        Figure.exact("fuel_time", "Fuel lasts", seconds, TradeUnit.HOUR, 1),
                        Figure.exact(
                                "energy", "Energy it gives meanwhile", generator.joules(load), TradeUnit.WATT_HOUR, 0)),
                List.of(),
                Cautions.GENERATOR,
                Working.of(new Step(
                        "fuel time",
                        "fuel an hour rises in a straight line with the load, through the maker's two times",
                        List.of(
                                "full load: " + TradeUnit.HOUR.print(generator.fullLoadSeconds(), 1),
                                "quarter load: " + TradeUnit.HOUR.print(generator.quarterLoadSeconds(), 1)),
                        TradeUnit.HOUR.print(seconds, 1),
                        new Citation("Willans line", CitationStatus.FROM_MEMORY))));
    }
}
