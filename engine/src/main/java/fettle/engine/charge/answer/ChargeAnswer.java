package fettle.engine.charge.answer;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.pack.simulation.CellEnd;
import fettle.engine.pack.simulation.Passed;
import fettle.engine.pack.simulation.StepOutcome.LimitChange;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * What charging a pack full comes to.
 *
 * @param duration how long [s]
 * @param returned charge put in [C]
 * @param sourceEnergy energy drawn from the source, charger's loss included [J]
 * @param heat heat made in the pack [J]
 * @param hottest warmest any cell gets [K]
 * @param spread volts between highest and lowest cell at the end [V]
 * @param packVolts volts the pack is held at [V]
 * @param cells every cell at the end
 * @param phases which limit held, and for how long
 * @param slower the same at half the current
 * @param working the steps
 */
public record ChargeAnswer(
        Estimate duration,
        Estimate returned,
        Estimate sourceEnergy,
        Estimate heat,
        Estimate hottest,
        Estimate spread,
        double packVolts,
        List<CellEnd> cells,
        List<Phase> phases,
        Slower slower,
        Working working) {
    private static final double HALF = 0.5;

    public ChargeAnswer {
        cells = List.copyOf(cells);
        phases = List.copyOf(phases);
    }

    /**
     * A time during which one limit held.
     *
     * @param limit the limit in words
     * @param seconds how long [s]
     */
    public record Phase(String limit, double seconds) {}

    /**
     * What half the current costs and saves.
     *
     * @param amps the current [A]
     * @param moreSeconds time it costs [s]
     * @param lessHeatJoules heat it saves [J]
     * @param coolerKelvins how much cooler the pack stays [K]
     */
    public record Slower(double amps, double moreSeconds, double lessHeatJoules, double coolerKelvins) {}

    /**
     * Works out a charge.
     *
     * @param pack the pack as it is known
     * @param limits the rules that hold for it
     * @param means what charges it
     * @throws InputException if it must not be charged at its temperature, or does not charge to a voltage
     */
    public static ChargeAnswer of(PackModel pack, Limits limits, ChargeMeans means) {
        refuseUnlessChargeable(pack, limits);
        double cellVolts = limits.si(Quantity.CHARGE_LIMIT);
        ChargeRun run = ChargeRun.of(pack, cellVolts, means);
        List<Estimate> figures = Spreading.around(
                figures(run, means), pack, variant -> figures(ChargeRun.of(variant, cellVolts, means), means));
        return new ChargeAnswer(
                figures.get(0),
                figures.get(1),
                figures.get(2),
                figures.get(3),
                figures.get(4),
                figures.get(5),
                run.packVolts(),
                run.summary().cells(),
                phases(run.summary()),
                slower(pack, cellVolts, means, run.summary()),
                working(pack, limits, means, run, figures));
    }

    private static void refuseUnlessChargeable(PackModel pack, Limits limits) {
        if (pack.chemistry() == Chemistry.NIMH) {
            throw new InputException(
                    "chemistry",
                    pack.name() + " is NiMH, which does not charge to a voltage: the charger ends it by its voltage dip"
                            + " or temperature. Take 1.5 times the charge wanted, over the current, as its time.");
        }
        double coldest = limits.si(Quantity.CHARGE_COLDEST);
        double warmest = limits.si(Quantity.CHARGE_WARMEST);
        if (pack.kelvins() < coldest || pack.kelvins() > warmest) {
            throw new InputException(
                    "temperature",
                    pack.name() + " is at " + TradeUnit.CELSIUS.print(pack.kelvins(), 0) + "; charge it only between "
                            + limits.rule(Quantity.CHARGE_COLDEST).print() + " and "
                            + limits.rule(Quantity.CHARGE_WARMEST).print()
                            + ". Let it come to room temperature first.");
        }
    }

    private static double[] figures(ChargeRun run, ChargeMeans means) {
        Summary summary = run.summary();
        Passed passed = summary.passed();
        return new double[] {
            summary.seconds(),
            passed.inCoulombs(),
            passed.inJoules() / means.efficiency(),
            passed.lostJoules(),
            summary.hottestKelvins().value(),
            spread(summary.cells())
        };
    }

    private static double spread(List<CellEnd> cells) {
        double high = cells.stream().mapToDouble(CellEnd::volts).max().orElseThrow();
        double low = cells.stream().mapToDouble(CellEnd::volts).min().orElseThrow();
        return high - low;
    }

    private static List<Phase> phases(Summary summary) {
        List<LimitChange> changes = summary.lastStep().limits();
        List<Phase> phases = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            double until = i + 1 < changes.size() ? changes.get(i + 1).seconds() : summary.seconds();
            phases.add(new Phase(
                    changes.get(i).limit().label(), until - changes.get(i).seconds()));
        }
        return phases;
    }

    private static Slower slower(PackModel pack, double cellVolts, ChargeMeans means, Summary usual) {
        Summary half = ChargeRun.of(pack, cellVolts, means.withAmps(HALF * means.amps()))
                .summary();
        return new Slower(
                HALF * means.amps(),
                half.seconds() - usual.seconds(),
                usual.passed().lostJoules() - half.passed().lostJoules(),
                usual.hottestKelvins().value() - half.hottestKelvins().value());
    }

    private static Working working(
            PackModel pack, Limits limits, ChargeMeans means, ChargeRun run, List<Estimate> figures) {
        Rule limit = limits.rule(Quantity.CHARGE_LIMIT);
        Step held = new Step(
                "volts held",
                "the highest pack volts at which no cell passes its limit",
                List.of(
                        "limit = " + limit.print() + " per cell",
                        "cells = " + pack.cells().size()),
                TradeUnit.VOLT.print(run.packVolts(), 2),
                limit.citation());
        Step power = new Step(
                "power at the pack",
                "the lesser of port power and source power × efficiency",
                List.of(
                        "port = " + TradeUnit.WATT.print(means.watts(), 0),
                        "source = " + TradeUnit.WATT.print(means.sourceWatts(), 0),
                        "efficiency = " + TradeUnit.PERCENT.print(means.efficiency(), 0)),
                TradeUnit.WATT.print(means.terminalWatts(), 0),
                new Citation(
                        "charger efficiency " + TradeUnit.PERCENT.print(ChargeMeans.USUAL_EFFICIENCY, 0)
                                + " where it is not known",
                        CitationStatus.FROM_MEMORY));
        Step time = new Step(
                "time",
                "cells simulated: constant current, then constant volts until the taper ends",
                List.of(
                        "current = " + TradeUnit.AMPERE.print(means.amps(), 2),
                        "taper ends at " + TradeUnit.AMPERE.print(means.endAmps(), 2)),
                TradeUnit.MINUTE.print(figures.get(0), 0),
                Circuits.SHAPE);
        return Working.of(held, power, time);
    }
}
