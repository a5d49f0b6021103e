package fettle.engine.pack.power;

import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.pack.simulation.CellEnd;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;
import java.util.function.Function;

/**
 * What a constant load does to a pack, from its present charge until a limit is met.
 *
 * @param runTime until the limit [s]
 * @param drawn charge drawn [C]
 * @param energy energy drawn [J]
 * @param firstSag drop of the pack's volts when the load comes on [V]
 * @param lowestCell lowest volts of the weakest cell [V]
 * @param hottest warmest any cell gets [K]
 * @param left charge left in the emptiest cell, at rest afterwards, a fraction
 * @param binding the limit that ended it
 * @param cells every cell at the end
 * @param working the steps
 */
public record LoadAnswer(
        Estimate runTime,
        Estimate drawn,
        Estimate energy,
        Estimate firstSag,
        Estimate lowestCell,
        Estimate hottest,
        Estimate left,
        String binding,
        List<CellEnd> cells,
        Working working) {
    public LoadAnswer {
        cells = List.copyOf(cells);
    }

    /** A constant current [A], &gt; 0. */
    public static LoadAnswer ofCurrent(PackModel pack, Limits limits, double amps) {
        positive("amps", "current", amps, "A");
        return of(pack, limits, variant -> LoadRun.untilLimit(variant, limits, new Demand.Current(amps), amps));
    }

    /** A constant power [W], &gt; 0. */
    public static LoadAnswer ofPower(PackModel pack, Limits limits, double watts) {
        positive("watts", "power", watts, "W");
        double amps = watts / Circuits.restVolts(pack);
        return of(pack, limits, variant -> LoadRun.untilLimit(variant, limits, new Demand.Power(watts), amps));
    }

    /**
     * A profile of currents, repeated from its beginning until a limit is met.
     *
     * @param parts currents [A], ≥ 0, and how long each lasts [s], > 0; some current must flow
     */
    public static LoadAnswer ofProfile(PackModel pack, Limits limits, List<ProfilePart> parts) {
        ProfilePart.refuseUnlessSound(parts);
        return of(pack, limits, variant -> ProfileRun.untilLimit(variant, limits, parts));
    }

    private static void positive(String field, String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new InputException(
                    field, what + " is " + value + " " + unit + "; expected more than 0 " + unit + ".");
        }
    }

    private static LoadAnswer of(PackModel pack, Limits limits, Function<PackModel, Summary> run) {
        Summary summary = run.apply(pack);
        List<Estimate> figures =
                Spreading.around(figures(pack, summary), pack, variant -> figures(variant, run.apply(variant)));
        String binding = LoadRun.limit(summary.lastStep(), limits);
        Step step = new Step(
                "time under load",
                "cells simulated until the first limit: weakest cell's volts, warmest cell, reserve",
                List.of(
                        "rest volts = " + TradeUnit.VOLT.print(Circuits.restVolts(pack), 2),
                        "pack at " + TradeUnit.CELSIUS.print(pack.kelvins(), 0),
                        "limit met = " + binding),
                TradeUnit.MINUTE.print(figures.get(0), 1),
                Circuits.SHAPE);
        return new LoadAnswer(
                figures.get(0),
                figures.get(1),
                figures.get(2),
                figures.get(3),
                figures.get(4),
                figures.get(5),
                figures.get(6),
                binding,
                summary.cells(),
                Working.of(step));
    }

    private static double[] figures(PackModel pack, Summary summary) {
        return new double[] {
            summary.seconds(),
            summary.passed().outCoulombs(),
            summary.passed().outJoules(),
            Circuits.restVolts(pack) - summary.steps().get(0).first().volts(),
            summary.lowestCellVolts().value(),
            summary.hottestKelvins().value(),
            summary.cells().stream().mapToDouble(CellEnd::chargeFraction).min().orElseThrow()
        };
    }
}
