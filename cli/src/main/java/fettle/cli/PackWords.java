package fettle.cli;

import fettle.engine.pack.Pack;
import fettle.engine.units.TradeUnit;

/** A pack in a few words. */
final class PackWords {
    private PackWords() {}

    /** {@code LiPo 4S 5000 mAh}. */
    static String label(Pack pack) {
        return pack.chemistry().label() + " " + pack.arrangement() + " "
                + TradeUnit.MILLIAMPERE_HOUR.print(pack.ratedCapacityCoulombs(), 0);
    }
}
