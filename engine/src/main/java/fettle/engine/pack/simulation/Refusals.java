package fettle.engine.pack.simulation;

import fettle.engine.units.InputException;
import java.util.List;
import java.util.Locale;

/** Refuses a protocol step that cannot go on, saying where it stands and why. Not thread-safe. */
final class Refusals {
    /** Charges beyond which a rest-voltage curve continued by its end slope says nothing. */
    private static final double LEAST_CHARGE = -0.5;

    private static final double MOST_CHARGE = 1.5;

    /** Changes between two looks below which a cell stands still. */
    private static final double STILL_CHARGE = 1e-12;

    private static final double STILL_KELVINS = 1e-7;
    private static final double STILL_VOLTS = 1e-9;
    private static final int PER_CELL = 3;
    private static final double SECONDS_PER_MINUTE = 60;

    private final Network network;
    private double[] lastLook = {};

    Refusals(Network network) {
        this.network = network;
    }

    /** A new protocol step begins. */
    void begin() {
        lastLook = new double[0];
    }

    static boolean isFinite(Network network) {
        return Double.isFinite(network.volts()) && Double.isFinite(network.amps());
    }

    void unlessFinite(ProtocolStep step) {
        if (isFinite(network)) {
            return;
        }
        String where = "step \"" + step.name() + "\" after " + clock(network.stepSeconds());
        if (step.demand() instanceof Demand.Power power) {
            throw new InputException(
                    "power",
                    String.format(
                            Locale.ROOT,
                            "%s asks for %.3f W; the packs can give at most %.3f W there. Ask for less, or end the step"
                                    + " at a higher voltage.",
                            where,
                            power.dischargeWatts(),
                            network.mostWatts()));
        }
        throw new InputException(
                "protocol",
                where + " has no finite answer: a source without resistance meets cells without resistance. Give the"
                        + " source, the leads or the cells a resistance.");
    }

    void whenRunAway(ProtocolStep step) {
        double lowest = network.lowestCellCharge();
        double charge = lowest < LEAST_CHARGE ? lowest : network.highestCellCharge();
        if (charge >= LEAST_CHARGE && charge <= MOST_CHARGE) {
            return;
        }
        throw noEnd(step, String.format(Locale.ROOT, "a cell has come to a charge of %.0f %%", 100 * charge));
    }

    void whenStill(ProtocolStep step) {
        double[] present = new double[PER_CELL * network.cells()];
        boolean still = lastLook.length > 0 && Double.isInfinite(step.mostSeconds());
        for (int cell = 0; cell < network.cells(); cell++) {
            int at = PER_CELL * cell;
            present[at] = network.cellCharge(cell);
            present[at + 1] = network.cellKelvins(cell);
            present[at + 2] = network.cellVolts(cell);
            still = still
                    && Math.abs(present[at] - lastLook[at]) <= STILL_CHARGE
                    && Math.abs(present[at + 1] - lastLook[at + 1]) <= STILL_KELVINS
                    && Math.abs(present[at + 2] - lastLook[at + 2]) <= STILL_VOLTS;
        }
        if (still) {
            throw noEnd(step, "nothing changes any more");
        }
        lastLook = present;
    }

    private InputException noEnd(ProtocolStep step, String why) {
        List<String> wanted = step.ends().stream().map(End::sentence).toList();
        return new InputException(
                "ends",
                String.format(
                        Locale.ROOT,
                        "step \"%s\" does not end by %s: after %s in it %s (%.3f V, %.3f A, cells %.4f to %.4f V). Change"
                                + " the figure, or add a condition that is met before.",
                        step.name(),
                        String.join(" or ", wanted),
                        clock(network.stepSeconds()),
                        why,
                        network.volts(),
                        network.amps(),
                        network.lowestCellVolts(),
                        network.highestCellVolts()));
    }

    private static String clock(double seconds) {
        return seconds < SECONDS_PER_MINUTE
                ? String.format(Locale.ROOT, "%.3f s", seconds)
                : String.format(Locale.ROOT, "%.1f min", seconds / SECONDS_PER_MINUTE);
    }
}
