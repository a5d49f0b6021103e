package fettle.workshop.worksheet;

import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.simulation.Balancer;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of a charger. */
final class ChargeFields {
    static final WorksheetField AMPS =
            WorksheetField.line("amps", "Charge current", "As set on the charger, in A.", "");
    static final WorksheetField WATTS = WorksheetField.line("watts", "Port power", "Largest, in W.", "10000 W");
    static final WorksheetField SOURCE =
            WorksheetField.line("source", "Source power", "Largest the supply gives, in W.", "100000 W");
    static final WorksheetField BLEED =
            WorksheetField.line("bleed", "Bleed current", "Of the balancer, in A. Left out: it does not balance.", "");

    /** A balancer is taken to bleed this share of the time; from memory. */
    private static final double DUTY = 0.8;

    private static final double WITHIN_VOLTS = 0.003;
    private static final double TAPER_SHARE = 0.05;

    private ChargeFields() {}

    /** What charges, with every fault kept at its field. */
    static ChargeMeans means(Typed typed) {
        double amps = typed.quantity("amps", Measure.CURRENT, TradeUnit.AMPERE, 1);
        double watts = typed.quantity("watts", Measure.POWER, TradeUnit.WATT, 1000);
        double source = typed.quantity("source", Measure.POWER, TradeUnit.WATT, 1000);
        return typed.read(
                "amps",
                () -> new ChargeMeans(
                        amps, watts, source, ChargeMeans.USUAL_EFFICIENCY, TAPER_SHARE * amps, Optional.empty()),
                ChargeMeans.ofAmps(1));
    }

    static Optional<Balancer> balancer(Typed typed) {
        OptionalDouble bleed = typed.optional("bleed", Measure.CURRENT, TradeUnit.AMPERE);
        return bleed.isPresent()
                ? Optional.of(new Balancer(bleed.getAsDouble(), DUTY, WITHIN_VOLTS))
                : Optional.empty();
    }
}
