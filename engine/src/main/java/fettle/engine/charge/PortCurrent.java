package fettle.engine.charge;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.supply.Source;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The largest current allowed for one pack on one port, rounded down to what a charger can be set to.
 *
 * @param amps the current [A]
 * @param because the limit that decides
 */
public record PortCurrent(double amps, String because) {
    private static final double SETTINGS_PER_AMP = 10;
    private static final double SMALL_SETTINGS_PER_AMP = 100;
    private static final double ROUNDING = 1e-9;

    /**
     * The charge current: the strictest of the pack's rating or rule, the port, the charger, the source, temperature and
     * condition; none if the charger does not take the pack or less than the smallest setting is allowed.
     */
    public static Optional<PortCurrent> charge(
            Assessment assessment, Limits rules, Charger charger, Port port, @Nullable Source source) {
        if (!takes(charger, port, assessment.pack())) {
            return Optional.empty();
        }
        ChargeCurrent found = ChargeCurrent.of(assessment, rules, charger, port, source);
        return settable(found.amps(), found.binding().what());
    }

    /** The current down to storage; none if the port cannot discharge the pack. */
    public static Optional<PortCurrent> discharge(Pack pack, Charger charger, Port port) {
        Double watts = port.dischargeWatts();
        if (!takes(charger, port, pack) || watts == null || watts <= 0) {
            return Optional.empty();
        }
        DischargeCurrent found = DischargeCurrent.of(pack, new Means.Place(charger, port), watts);
        return settable(found.amps(), found.limits().get(0).what());
    }

    private static boolean takes(Charger charger, Port port, Pack pack) {
        return charger.chemistries().contains(pack.chemistry()) && port.maxCells() >= pack.cellsInSeries();
    }

    private static Optional<PortCurrent> settable(double amps, String because) {
        double settings = amps < 1 ? SMALL_SETTINGS_PER_AMP : SETTINGS_PER_AMP;
        double set = Math.floor(amps * settings + ROUNDING) / settings;
        return set > 0 ? Optional.of(new PortCurrent(set, because)) : Optional.empty();
    }
}
