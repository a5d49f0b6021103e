package fettle.cli;

import fettle.engine.health.CellResistance;
import fettle.engine.health.TraceHealth;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.health.identification.IdentifiedPair;
import fettle.engine.trace.TraceResistance;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** Resistances found in a trace, as text. */
final class ResistanceText {
    private ResistanceText() {}

    /** E.g. {@code cell 2: 3.1 ± 0.1 mΩ at 25 °C}. */
    static String kept(TraceResistance found) {
        Estimate ohms = new Estimate(found.ohmsAt25(), found.deviationOhms(), List.of());
        return (found.cell() == 0 ? "mean cell" : "cell " + found.cell()) + ": " + TradeUnit.MILLIOHM.print(ohms, 2)
                + " at 25 °C in its longest run";
    }

    static String of(TraceHealth health) {
        List<String> lines = new ArrayList<>();
        for (CellResistance cell : health.cells()) {
            String name = cell.number() == 0 ? "mean" : "cell " + cell.number();
            IdentifiedCircuit circuit = cell.circuit();
            if (circuit == null || cell.r0At25Ohms() == null) {
                lines.addAll(Wrapped.lines(name, "cannot be told: " + cell.why()));
                continue;
            }
            lines.addAll(Wrapped.lines(
                    name,
                    "R0 " + TradeUnit.MILLIOHM.print(circuit.r0(), 1) + " at "
                            + TradeUnit.CELSIUS.print(circuit.kelvins(), 0) + ", "
                            + TradeUnit.MILLIOHM.print(cell.r0At25Ohms(), 1) + " at 25 °C; after 10 s "
                            + TradeUnit.MILLIOHM.print(cell.tenSecondOhms(), 1)));
            for (IdentifiedPair pair : circuit.pairs()) {
                lines.addAll(Wrapped.lines(
                        "pair",
                        TradeUnit.MILLIOHM.print(pair.ohms(), 1) + ", " + TradeUnit.SECOND.print(pair.seconds(), 1)));
            }
            lines.addAll(Wrapped.lines(
                    "left",
                    TradeUnit.MILLIVOLT.print(circuit.rmsVolts(), 1) + " rms unexplained; " + circuit.rows()
                            + " rows worth " + Math.round(circuit.effectiveSamples()) + " independent ones, "
                            + circuit.spikes() + " spikes left out"));
            circuit.doubts().forEach(doubt -> lines.addAll(Wrapped.lines("doubt", doubt)));
        }
        health.remarks().forEach(remark -> lines.addAll(Wrapped.lines("note", remark)));
        return String.join(System.lineSeparator(), lines);
    }
}
