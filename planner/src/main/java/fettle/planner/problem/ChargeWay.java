package fettle.planner.problem;

import java.util.List;

/**
 * One way to charge or discharge: these packs, together, on this port, at this current.
 *
 * <p>Packs charged in parallel start from the lowest of their charges, which overstates the time rather than understating it.
 *
 * @param name its name, unique
 * @param packs tags of the packs; more than one means in parallel
 * @param port name of the port
 * @param amps current set [A], all packs together
 * @param curve time and power
 * @param stress what one such charge costs its packs, in whole units: 0 for the gentlest
 * @param alikeWithin packs may be joined in parallel only where their charges differ by no more than this fraction
 */
public record ChargeWay(
        String name, List<String> packs, String port, double amps, ChargeCurve curve, int stress, double alikeWithin) {
    /** Charges of packs joined in parallel differ by at most 5 %: common practice, no source. */
    public static final double USUALLY_ALIKE_WITHIN = 0.05;

    public ChargeWay {
        packs = List.copyOf(packs);
    }

    /** A way for one pack. */
    public static ChargeWay single(String name, String pack, String port, double amps, ChargeCurve curve, int stress) {
        return new ChargeWay(name, List.of(pack), port, amps, curve, stress, USUALLY_ALIKE_WITHIN);
    }
}
