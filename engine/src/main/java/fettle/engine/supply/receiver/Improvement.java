package fettle.engine.supply.receiver;

/**
 * A change and what it brings.
 *
 * @param change what to change
 * @param marginVolts what it adds to the reset margin with one servo stalled [V]
 * @param peakShare by how much it lowers the share of the BEC's peak that all servos stalled take; 0.2 is 20 %
 */
public record Improvement(String change, double marginVolts, double peakShare) {}
