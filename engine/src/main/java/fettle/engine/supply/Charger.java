package fettle.engine.supply;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A charger with its ports.
 *
 * @param name its name on the bench
 * @param totalWatts power shared by all ports [W]; {@code null} if each port has its own
 * @param chemistries what it can charge
 * @param source name of the source that feeds it; {@code null} if not stated
 * @param ports its outputs, at least one
 * @param note free text
 */
public record Charger(
        String name,
        @Nullable Double totalWatts,
        Set<Chemistry> chemistries,
        @Nullable String source,
        List<Port> ports,
        String note) {
    public Charger {
        chemistries = Set.copyOf(chemistries);
        ports = List.copyOf(ports);
        Faults faults = new Faults();
        if (name.isBlank()) {
            faults.add("name", "the charger has no name. Give it the name you use on the bench.");
        }
        if (ports.isEmpty()) {
            faults.add(
                    "ports", "charger " + name + " has no port. State at least one port with amps, watts and cells.");
        }
        if (chemistries.isEmpty()) {
            faults.add("chemistries", "charger " + name + " has no chemistry. State what it can charge.");
        }
        faults.range("totalWatts", "total power", totalWatts, TradeUnit.WATT, 0.1, 20_000, "Read it off the charger.");
        for (Port port : ports) {
            String at = "port " + port.number() + " ";
            String field = "ports." + port.number();
            faults.range(
                    field, at + "current", port.maxAmps(), TradeUnit.AMPERE, 0.01, 200, "Read it off the charger.");
            faults.range(field, at + "power", port.maxWatts(), TradeUnit.WATT, 0.1, 10_000, "Read it off the charger.");
            faults.range(
                    field, at + "bleed current", port.bleedAmps(), TradeUnit.AMPERE, 0, 20, "See its maker's sheet.");
            faults.range(
                    field,
                    at + "discharge power",
                    port.dischargeWatts(),
                    TradeUnit.WATT,
                    0,
                    10_000,
                    "See its maker's sheet.");
            if (port.maxCells() < 1 || port.maxCells() > 30) {
                faults.add(field, at + "cells are " + port.maxCells() + "; expected 1 to 30. Read it off the charger.");
            }
        }
        faults.refuse();
    }
}
