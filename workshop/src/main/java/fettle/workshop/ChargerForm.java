package fettle.workshop;

import fettle.engine.supply.Charger;

/**
 * A charger as typed by a person. Ports are one a line or separated by semicolons:
 * {@code 20A 400W 6S bleed 0.5A discharge 25W}. Chemistries are separated by commas.
 */
public record ChargerForm(
        String name, String totalPower, String chemistries, String source, String ports, String note) {
    public Charger toCharger() {
        throw new UnsupportedOperationException();
    }

    public static ChargerForm of(Charger charger) {
        throw new UnsupportedOperationException();
    }
}
