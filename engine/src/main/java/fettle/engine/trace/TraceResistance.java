package fettle.engine.trace;

/**
 * What the longest run of a trace says of one cell's resistance; kept with the trace, and found anew when the model changes.
 *
 * @param cell the cell, from 1; 0 for the mean cell where cells were not logged
 * @param ohmsAt25 its fast resistance brought to 25 °C [Ω]
 * @param deviationOhms one standard deviation [Ω]
 */
public record TraceResistance(int cell, double ohmsAt25, double deviationOhms) {}
