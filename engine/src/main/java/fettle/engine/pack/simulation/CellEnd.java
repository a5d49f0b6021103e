package fettle.engine.pack.simulation;

/**
 * One cell at the end.
 *
 * @param pack name of its pack
 * @param position its position in the pack, from 1; cells side by side follow each other
 * @param volts terminal volts [V]
 * @param restVolts rest volts it would settle at [V]
 * @param chargeFraction charge
 * @param kelvins temperature [K]
 */
public record CellEnd(
        String pack, int position, double volts, double restVolts, double chargeFraction, double kelvins) {}
