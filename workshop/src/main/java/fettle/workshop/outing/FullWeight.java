package fettle.workshop.outing;

import fettle.engine.rule.Quantity;

/**
 * What a minute at full costs a pack against other packs, from a published dependence of calendar ageing.
 *
 * <p>Capacity lost ∝ (7.543·V − 23.75)·exp(−6976/T) for an NMC cell stored at V volts and T kelvins; taken relative to 4.2 V at
 * 20 °C. Fitted to no hobby pack; the models that were published differ by a factor of three.
 *
 * @see "J. Schmalstieg et al., J. Power Sources 257 (2014) 325"
 */
final class FullWeight {
    private static final double PER_VOLT = 7.543;
    private static final double AT_ZERO = -23.75;
    private static final double ARRHENIUS_KELVINS = 6976;
    private static final double USUAL_VOLTS = 4.2;
    private static final double USUAL_KELVINS = 293.15;
    private static final int SCALE = 2;

    private FullWeight() {}

    /** The weight of a pack, in whole units; 0 where being full costs nothing known. */
    static int of(PackAtHand hand, double kelvins) {
        if (!hand.pack().chemistry().isLithium()) {
            return 0;
        }
        double volts = hand.limits().si(Quantity.CHARGE_LIMIT);
        double byVolts = (PER_VOLT * volts + AT_ZERO) / (PER_VOLT * USUAL_VOLTS + AT_ZERO);
        double byWarmth = Math.exp(ARRHENIUS_KELVINS * (1 / USUAL_KELVINS - 1 / kelvins));
        return (int) Math.max(1, Math.round(SCALE * byVolts * byWarmth));
    }
}
