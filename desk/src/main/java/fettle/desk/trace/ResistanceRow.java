package fettle.desk.trace;

import fettle.engine.health.CellResistance;
import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.units.TradeUnit;
import java.util.stream.Collectors;

/**
 * One cell's resistance as a trace shows it.
 *
 * @param name the cell's number, or {@code mean}
 * @param r0 at its own temperature
 * @param at25 at 25 °C
 * @param tenSeconds what a load of ten seconds sees
 * @param pairs the slower parts
 * @param note why there is no answer, or what is doubtful
 */
public record ResistanceRow(String name, String r0, String at25, String tenSeconds, String pairs, String note) {
    static ResistanceRow of(CellResistance cell) {
        String name = cell.number() == 0 ? "mean" : String.valueOf(cell.number());
        IdentifiedCircuit circuit = cell.circuit();
        if (circuit == null || cell.r0At25Ohms() == null) {
            return new ResistanceRow(name, "", "", "", "", cell.why());
        }
        return new ResistanceRow(
                name,
                TradeUnit.MILLIOHM.print(circuit.r0(), 1),
                TradeUnit.MILLIOHM.print(cell.r0At25Ohms(), 1),
                TradeUnit.MILLIOHM.print(cell.tenSecondOhms(), 1),
                circuit.pairs().stream()
                        .map(pair -> TradeUnit.MILLIOHM.print(pair.ohms(), 1) + " in "
                                + TradeUnit.SECOND.print(pair.seconds().value(), 0))
                        .collect(Collectors.joining(", ")),
                String.join("; ", circuit.doubts()));
    }
}
