package fettle.engine.pack.simulation;

import java.util.List;

/**
 * What a simulation came to.
 *
 * @param seconds how long it lasted [s]
 * @param steps the protocol steps in order
 * @param passed charge and energy over the whole
 * @param cells every cell at the end
 * @param lowestVolts lowest terminal volts [V]
 * @param highestVolts highest terminal volts [V]
 * @param lowestCellVolts lowest volts of any cell [V]
 * @param highestCellVolts highest volts of any cell [V]
 * @param hottestKelvins highest temperature of any cell [K]
 * @param largestAmps largest current either way [A]
 * @param timeSteps time steps taken
 */
public record Summary(
        double seconds,
        List<StepOutcome> steps,
        Passed passed,
        List<CellEnd> cells,
        Peak lowestVolts,
        Peak highestVolts,
        Peak lowestCellVolts,
        Peak highestCellVolts,
        Peak hottestKelvins,
        Peak largestAmps,
        long timeSteps) {
    public Summary {
        steps = List.copyOf(steps);
        cells = List.copyOf(cells);
    }

    /** The last step. */
    public StepOutcome lastStep() {
        return steps.get(steps.size() - 1);
    }
}
