package fettle.engine.supply.receiver;

import fettle.engine.supply.wire.Lead;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.util.Comparator;
import java.util.List;

/**
 * A receiver, its servos and what feeds them.
 *
 * @param regulator BEC or pack
 * @param feed lead from there to the receiver
 * @param servos all servos
 * @param receiverAmps receiver, gyro and telemetry together [A]
 * @param resetVolts voltage below which the receiver resets [V]
 */
public record ReceiverSupply(
        Regulator regulator, Lead feed, List<ServoDraw> servos, double receiverAmps, double resetVolts) {
    public ReceiverSupply {
        servos = List.copyOf(servos);
        if (servos.isEmpty()) {
            throw new InputException("servos", "no servo is given. Give at least one with its currents.");
        }
        new Faults()
                .range("receiverAmps", "receiver current", receiverAmps, TradeUnit.AMPERE, 0, 5, "Usually 0.1 A.")
                .range("resetVolts", "reset voltage", resetVolts, TradeUnit.VOLT, 1.5, 12, "See the receiver's sheet.")
                .refuse();
    }

    /** Current of one servo in a scenario [A]. */
    double amps(ServoDraw servo, Scenario scenario) {
        return switch (scenario) {
            case CRUISE -> servo.cruiseAmps();
            case HARD_MANOEUVRE -> servo.hardAmps();
            case ONE_STALLED -> servo.equals(hungriest()) ? servo.stallAmps() : servo.movingAmps();
            case ALL_STALLED -> servo.stallAmps();
        };
    }

    /** Current of everything in a scenario [A]. */
    public double amps(Scenario scenario) {
        return receiverAmps
                + servos.stream().mapToDouble(servo -> amps(servo, scenario)).sum();
    }

    private ServoDraw hungriest() {
        return servos.stream()
                .max(Comparator.comparingDouble(servo -> servo.stallAmps() - servo.movingAmps()))
                .orElseThrow();
    }

    ReceiverSupply with(Regulator other) {
        return new ReceiverSupply(other, feed, servos, receiverAmps, resetVolts);
    }

    ReceiverSupply with(Lead other) {
        return new ReceiverSupply(regulator, other, servos, receiverAmps, resetVolts);
    }

    ReceiverSupply with(List<ServoDraw> others) {
        return new ReceiverSupply(regulator, feed, others, receiverAmps, resetVolts);
    }
}
