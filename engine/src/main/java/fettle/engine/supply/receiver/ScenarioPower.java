package fettle.engine.supply.receiver;

import fettle.engine.units.Estimate;

/**
 * The supply in one scenario.
 *
 * @param scenario which
 * @param amps current of everything [A]
 * @param receiverVolts at the receiver [V], with ±; beyond the BEC's peak it may be anything lower
 * @param resetMarginVolts what is left above the receiver's reset [V], with ±
 * @param heatWatts heat in the BEC [W]
 * @param lowestServo servo with the least voltage
 * @param lowestServoVolts voltage there [V], with ±
 */
public record ScenarioPower(
        Scenario scenario,
        double amps,
        Estimate receiverVolts,
        Estimate resetMarginVolts,
        double heatWatts,
        String lowestServo,
        Estimate lowestServoVolts) {}
