package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.CellCircuit;

/**
 * A cell and the charge it begins with, at rest.
 *
 * @param circuit the cell
 * @param chargeFraction its charge at the start, −0.5 to 1.5
 * @param kelvins its temperature at the start [K]
 */
public record CellAt(CellCircuit circuit, double chargeFraction, double kelvins) {}
