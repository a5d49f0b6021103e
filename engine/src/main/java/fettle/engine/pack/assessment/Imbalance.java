package fettle.engine.pack.assessment;

import fettle.engine.pack.CellState;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far apart the cells of the latest check are, in volts and in charge.
 *
 * <p>Formula: Δq = capacity · (z(v_high) − z(v_low)); its ± is that of the two readings over the curve's slope. The band
 * between cells of the chemistry is common to both and drops out.
 *
 * @param fullest the fullest cell
 * @param weakest the weakest cell
 * @param volts difference of rest volts [V], ≥ 0
 * @param coulombs difference of charge [C]
 * @param step the working
 */
record Imbalance(CellState fullest, CellState weakest, double volts, Estimate coulombs, Step step) {
    static Optional<Imbalance> of(PackCase packCase) {
        if (packCase.cells().size() < 2) {
            return Optional.empty();
        }
        Comparator<CellState> byVolts = Comparator.comparingDouble(CellState::restVolts);
        CellState fullest = packCase.cells().stream().max(byVolts).orElseThrow();
        CellState weakest = packCase.cells().stream().min(byVolts).orElseThrow();
        double volts = fullest.restVolts() - weakest.restVolts();
        double capacity = packCase.pack().ratedCapacityCoulombs();
        double slope = packCase.curve()
                .slopeVolts(0.5 * (fullest.charge().value() + weakest.charge().value()));
        double charge =
                packCase.curve().charge(fullest.restVolts()) - packCase.curve().charge(weakest.restVolts());
        double reading = Math.sqrt(2) * packCase.meter().cellVolts() / slope * capacity;
        double settling = Math.sqrt(2) * packCase.settlingVolts() / slope * capacity;
        Estimate coulombs = Estimate.ofIndependent(
                charge * capacity, List.of(new Driver("meter accuracy", reading), new Driver("rest time", settling)));
        return Optional.of(new Imbalance(fullest, weakest, volts, coulombs, step(packCase, volts, slope, coulombs)));
    }

    /** {@code 24 mV = 110 ± 35 mAh}. */
    String print() {
        return TradeUnit.MILLIVOLT.print(volts, 0) + " = " + TradeUnit.MILLIAMPERE_HOUR.print(coulombs, 0);
    }

    private static Step step(PackCase packCase, double volts, double slope, Estimate coulombs) {
        return new Step(
                "imbalance in charge",
                "Δq = capacity · (z(highest) − z(lowest)); where the curve is flat a few mV are many mAh",
                List.of(
                        "Δv = " + TradeUnit.MILLIVOLT.print(volts, 1),
                        "slope here = " + TradeUnit.MILLIVOLT.print(slope / 100, 1) + " per %",
                        "capacity = "
                                + TradeUnit.MILLIAMPERE_HOUR.print(
                                        packCase.pack().ratedCapacityCoulombs(), 0)),
                TradeUnit.MILLIAMPERE_HOUR.print(coulombs, 0),
                Citation.published("rest curve: " + packCase.curve().citation().text()));
    }
}
