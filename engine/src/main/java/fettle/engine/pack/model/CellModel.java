package fettle.engine.pack.model;

/**
 * One place of a pack in series, as it is known.
 *
 * @param chargeFraction charge, 0 empty to 1 full
 * @param capacityCoulombs charge from empty to full [C], &gt; 0
 * @param stepOhms resistance seen about half a second to a second after a load comes on, at 25 °C [Ω], &gt; 0
 */
public record CellModel(double chargeFraction, double capacityCoulombs, double stepOhms) {
    CellModel withCharge(double fraction) {
        return new CellModel(fraction, capacityCoulombs, stepOhms);
    }

    CellModel scaled(double capacityFactor, double resistanceFactor) {
        return new CellModel(chargeFraction, capacityCoulombs * capacityFactor, stepOhms * resistanceFactor);
    }
}
