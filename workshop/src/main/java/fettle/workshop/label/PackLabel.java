package fettle.workshop.label;

import org.jspecify.annotations.Nullable;

/**
 * What stands on one pack's label.
 *
 * @param tag its tag
 * @param chemistry its chemistry, e.g. {@code LiPo}
 * @param cells its arrangement, e.g. {@code 4S}
 * @param ratedCapacityCoulombs the label's capacity [C]
 * @param chargeLimitVolts volts of the whole pack never to be passed in charging [V]; {@code null} while nobody has
 *     confirmed chemistry and cell count
 * @param code what the square code says: the address of its page, or {@code fettle:} and the tag
 */
public record PackLabel(
        String tag,
        String chemistry,
        String cells,
        double ratedCapacityCoulombs,
        @Nullable Double chargeLimitVolts,
        String code) {
    /** What a code begins with that names a tag and no desk. */
    public static final String SCHEME = "fettle:";
}
