package fettle.engine.health;

import fettle.engine.health.identification.IdentifiedCircuit;
import fettle.engine.units.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * What a trace says of one cell's circuit.
 *
 * @param number position on the balance lead, from 1; 0 for the pack's mean cell where cells were not logged
 * @param circuit the circuit at the cell's own temperature; {@code null} where the data cannot tell
 * @param r0At25Ohms R0 brought to 25 °C [Ω]; {@code null} where the data cannot tell
 * @param tenSecondOhms what a load of ten seconds sees, at the cell's own temperature [Ω]; 0 where the data cannot tell
 * @param why why there is no answer; empty where there is one
 */
public record CellResistance(
        int number,
        @Nullable IdentifiedCircuit circuit,
        @Nullable Estimate r0At25Ohms,
        double tenSecondOhms,
        String why) {}
