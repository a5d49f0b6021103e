package fettle.engine.charge.answer;

import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.Summary;

/**
 * One charge, simulated: constant current, then constant voltage until the taper ends.
 *
 * <p>No cell may pass its limit: where one would, the pack is held at lower volts.
 *
 * @param packVolts the pack volts held [V]
 * @param summary what it came to
 */
record ChargeRun(double packVolts, Summary summary) {
    private static final double STEP_SECONDS = 2;
    private static final int HALVINGS = 14;

    /** A day: no charge of a sound pack takes longer. */
    private static final double LONGEST_SECONDS = 86_400;

    static ChargeRun of(PackModel pack, double cellLimitVolts, ChargeMeans means) {
        int cells = pack.cells().size();
        double high = cells * cellLimitVolts;
        ChargeRun whole = at(pack, high, means);
        if (whole.summary.highestCellVolts().value() <= cellLimitVolts) {
            return whole;
        }
        double low = high - cells * (whole.summary.highestCellVolts().value() - cellLimitVolts) - cellLimitVolts;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean kept = at(pack, middle, means).summary.highestCellVolts().value() <= cellLimitVolts;
            low = kept ? middle : low;
            high = kept ? high : middle;
        }
        return at(pack, low, means);
    }

    private static ChargeRun at(PackModel pack, double packVolts, ChargeMeans means) {
        Demand.Charge demand = new Demand.Charge(packVolts, means.amps(), means.terminalWatts(), 0);
        ProtocolStep step = ProtocolStep.of(
                "charge",
                demand,
                STEP_SECONDS,
                new End(EndKind.CURRENT_AT_MOST, means.endAmps()),
                End.after(LONGEST_SECONDS));
        return new ChargeRun(packVolts, Simulation.run(Circuits.bench(pack, means.balancer()), Protocol.of(step)));
    }
}
