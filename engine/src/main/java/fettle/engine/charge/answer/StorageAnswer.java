package fettle.engine.charge.answer;

import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.pack.simulation.CellEnd;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Estimate;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;
import java.util.Optional;

/**
 * What bringing a pack to its storage band comes to.
 *
 * @param drawn charge to draw [C], negative to put in, 0 if nothing need be done
 * @param duration how long [s]
 * @param heat heat made in the pack [J]
 * @param amps the current [A]
 * @param binding the limit that sets it
 * @param cellCharges charge of each cell afterwards, a fraction
 * @param inBand whether every cell is then inside the band; if not, it wants balancing
 * @param working the steps
 */
public record StorageAnswer(
        Estimate drawn,
        Estimate duration,
        Estimate heat,
        double amps,
        String binding,
        List<Double> cellCharges,
        boolean inBand,
        Working working) {
    private static final double STEP_SECONDS = 2;
    private static final double ROUNDING = 1e-6;
    private static final double LEAST_COULOMBS = 1e-6;

    public StorageAnswer {
        cellCharges = List.copyOf(cellCharges);
    }

    /**
     * Works out the way to the storage band.
     *
     * @param pack the pack as it is known
     * @param limits the rules that hold for it
     * @param means largest current either way [A] and power of the port [W]
     */
    public static StorageAnswer of(PackModel pack, Limits limits, Means means) {
        StorageBand band = StorageBand.of(pack, limits);
        double coulombs = band.coulombsToDraw(pack);
        double watts = coulombs > 0 ? means.dischargeWatts() : means.chargeWatts();
        double volts = pack.cells().size() * pack.chemistry().nominalVolts();
        boolean byPower = watts / volts < means.amps();
        double amps = byPower ? watts / volts : means.amps();
        Optional<Summary> run = run(pack, coulombs, amps);
        List<Estimate> figures = Spreading.around(figures(coulombs, run), pack, variant -> {
            double variantCoulombs = band.coulombsToDraw(variant);
            return figures(variantCoulombs, run(variant, variantCoulombs, amps));
        });
        List<Double> after = after(pack, run);
        String binding = byPower
                ? "port power " + TradeUnit.WATT.print(watts, 0) + " at nominal volts"
                : "current " + TradeUnit.AMPERE.print(means.amps(), 2);
        return new StorageAnswer(
                figures.get(0),
                figures.get(1),
                figures.get(2),
                amps,
                binding,
                after,
                after.stream().allMatch(z -> z > band.low() - ROUNDING && z < band.high() + ROUNDING),
                Working.of(step(limits, band, binding, amps, figures)));
    }

    /**
     * What moves the charge.
     *
     * @param amps largest current either way [A], &gt; 0
     * @param dischargeWatts discharge power of the port [W], &gt; 0
     * @param chargeWatts charge power of the port [W], &gt; 0
     */
    public record Means(double amps, double dischargeWatts, double chargeWatts) {
        public Means {
            Faults faults = new Faults();
            faults.range("amps", "current", amps, TradeUnit.AMPERE, 0.01, 200, "Give it in A.");
            faults.range(
                    "discharge_watts", "discharge power", dischargeWatts, TradeUnit.WATT, 0.1, 10_000, "Give it in W.");
            faults.range("watts", "port power", chargeWatts, TradeUnit.WATT, 0.1, 10_000, "Give it in W.");
            faults.refuse();
        }
    }

    private static Step step(Limits limits, StorageBand band, String binding, double amps, List<Estimate> figures) {
        return new Step(
                "to storage",
                "until no cell is outside the band, as far as one current through all of them can",
                List.of(
                        "band = " + limits.rule(Quantity.STORAGE_LOW).print() + " to "
                                + limits.rule(Quantity.STORAGE_HIGH).print() + " = "
                                + TradeUnit.PERCENT.print(band.low(), 0) + " to "
                                + TradeUnit.PERCENT.print(band.high(), 0),
                        "current = " + TradeUnit.AMPERE.print(amps, 2) + ", set by " + binding),
                TradeUnit.MILLIAMPERE_HOUR.print(figures.get(0), 0) + " in "
                        + TradeUnit.MINUTE.print(figures.get(1), 0),
                limits.rule(Quantity.STORAGE_HIGH).citation());
    }

    private static double[] figures(double coulombs, Optional<Summary> run) {
        return run.map(summary -> new double[] {
                    coulombs, summary.seconds(), summary.passed().lostJoules()
                })
                .orElseGet(() -> new double[] {0, 0, 0});
    }

    private static List<Double> after(PackModel pack, Optional<Summary> run) {
        return run.map(summary ->
                        summary.cells().stream().map(CellEnd::chargeFraction).toList())
                .orElseGet(() ->
                        pack.cells().stream().map(CellModel::chargeFraction).toList());
    }

    /** Empty where nothing need be done. */
    private static Optional<Summary> run(PackModel pack, double coulombs, double amps) {
        if (Math.abs(coulombs) < LEAST_COULOMBS) {
            return Optional.empty();
        }
        ProtocolStep step = ProtocolStep.of(
                "to storage",
                new Demand.Current(Math.copySign(amps, coulombs)),
                STEP_SECONDS,
                new End(EndKind.CHARGE_PASSED, Math.abs(coulombs)));
        return Optional.of(Simulation.run(Circuits.bench(pack, Optional.empty()), Protocol.of(step)));
    }
}
