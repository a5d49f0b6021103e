package fettle.workshop;

import fettle.engine.pack.Pack;

/**
 * A pack as typed by a person: the one place where typed words become a {@link Pack}, for desk and command line.
 *
 * <p>Empty text means not stated. Capacity takes {@code 5000}, {@code 5000 mAh} or {@code 5 Ah}; ratings take
 * {@code 5C} or {@code 10A}; mass takes {@code 540 g} or {@code 19 oz}; cells take {@code 4S}, {@code 6S2P} or {@code 4}.
 */
public record PackForm(
        String tag,
        String chemistry,
        String cells,
        String capacity,
        String chargeRating,
        String dischargeRating,
        String mass,
        String connector,
        String bought,
        String keeper,
        String identity,
        String note) {
    /** The pack, or {@link fettle.engine.units.InputException} with every fault, each at its field's name here. */
    public Pack toPack() {
        throw new UnsupportedOperationException();
    }

    /** A pack as a person would type it. */
    public static PackForm of(Pack pack) {
        throw new UnsupportedOperationException();
    }
}
