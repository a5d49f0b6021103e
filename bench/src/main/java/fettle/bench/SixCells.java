package fettle.bench;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.CellAt;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.units.TradeUnit;

/** Six unequal cells in series, each with two pairs, heat and a temperature law; what is done with them. */
final class SixCells {
    static final double AMBIENT_CELSIUS = 20;
    static final double PACK_LIMIT_VOLTS = 25.2;
    static final double CHARGE_AMPS = 5;
    static final double SOURCE_OHMS = 0.001;
    static final double HOUR_SECONDS = 3600;
    static final double ACTIVATION = 22_000;
    static final double HEAT_CAPACITY = 110;
    static final double HEAT_TRANSFER = 0.2;
    static final double C1 = 4000;
    static final double C2 = 60_000;
    static final double[] CAPACITY_AH = {5.0, 4.95, 4.9, 5.0, 4.97, 4.92};
    static final double[] CHARGE = {0.20, 0.205, 0.185, 0.20, 0.195, 0.21};
    static final double[] R0 = {0.004, 0.004, 0.006, 0.0042, 0.0045, 0.0041};
    static final double R1 = 0.003;
    static final double R2 = 0.002;

    /** Every 5 % of the table of Ai et al. 2020, J. Electrochem. Soc. 167 013512 (LCO pouch cell). */
    static final double[] REST_VOLTS = {
        3.000000, 3.542056, 3.639560, 3.665354, 3.695383, 3.716756, 3.733089, 3.748128, 3.762193, 3.776298, 3.792508,
        3.812162, 3.836461, 3.867502, 3.908890, 3.951948, 3.994483, 4.040859, 4.087947, 4.138362, 4.200000
    };

    private SixCells() {}

    static Bench bench() {
        double kelvins = TradeUnit.CELSIUS.toSi(AMBIENT_CELSIUS);
        OpenCircuit curve = curve();
        CellAt[] cells = new CellAt[CHARGE.length];
        for (int cell = 0; cell < cells.length; cell++) {
            CellCircuit circuit = CellCircuit.of(
                            TradeUnit.AMPERE_HOUR.toSi(CAPACITY_AH[cell]),
                            curve,
                            R0[cell],
                            new RcPair(R1, C1),
                            new RcPair(R2, C2))
                    .with(new Arrhenius(ACTIVATION), new ThermalNode(HEAT_CAPACITY, HEAT_TRANSFER));
            cells[cell] = new CellAt(circuit, CHARGE[cell], kelvins);
        }
        return Bench.of(PackCircuit.series("six", 0, cells), kelvins);
    }

    private static OpenCircuit curve() {
        double[] charge = new double[REST_VOLTS.length];
        for (int row = 0; row < charge.length; row++) {
            charge[row] = row / (charge.length - 1.0);
        }
        return OpenCircuit.of(charge, REST_VOLTS);
    }

    /** An hour of constant-current, constant-voltage charging at one-second steps. */
    static Protocol charge() {
        Demand source = new Demand.Charge(PACK_LIMIT_VOLTS, CHARGE_AMPS, Double.POSITIVE_INFINITY, SOURCE_OHMS);
        return Protocol.of(ProtocolStep.of("charge", source, 1, End.after(HOUR_SECONDS)));
    }

    /** Back and forth through most of the charge, an hour for each cycle. */
    static Protocol cycles(int hours) {
        ProtocolStep[] steps = new ProtocolStep[2 * hours];
        for (int hour = 0; hour < hours; hour++) {
            steps[2 * hour] = ProtocolStep.of("in", new Demand.Current(-6), 1, End.after(HOUR_SECONDS / 2));
            steps[2 * hour + 1] = ProtocolStep.of("out", new Demand.Current(6), 1, End.after(HOUR_SECONDS / 2));
        }
        return Protocol.of(steps);
    }

    /** An hour's flight pattern at constant power, ended early by a cell at its minimum. */
    static Protocol power() {
        return Protocol.of(ProtocolStep.of(
                "power", new Demand.Power(10), 1, End.after(HOUR_SECONDS), new End(EndKind.CELL_VOLTS_AT_MOST, 3.2)));
    }
}
