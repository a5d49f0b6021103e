package fettle.engine.pack;

import fettle.engine.units.Estimate;
import fettle.engine.working.Working;

/**
 * What one cell's rest volts say.
 *
 * @param number position on the balance lead, from 1
 * @param restVolts as read [V]
 * @param charge fraction of full, 0 … 1
 * @param working how charge was reached
 */
public record CellState(int number, double restVolts, Estimate charge, Working working) {}
