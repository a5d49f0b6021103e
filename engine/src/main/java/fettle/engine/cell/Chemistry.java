package fettle.engine.cell;

import fettle.engine.units.InputException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** The chemistries Fettle knows, with the nominal cell volts used for watt-hours. */
public enum Chemistry {
    LIPO("LiPo", 3.7),
    LIHV("LiHV", 3.8),
    LIFEPO4("LiFePO4", 3.2),
    LI_ION("Li-ion", 3.6),
    NIMH("NiMH", 1.2),
    LEAD_ACID("lead-acid", 2.0);

    private final String label;
    private final double nominalVolts;

    Chemistry(String label, double nominalVolts) {
        this.label = label;
        this.nominalVolts = nominalVolts;
    }

    public String label() {
        return label;
    }

    /** Nominal volts per cell [V]: maker specifications; LiHV and lead-acid from memory. */
    public double nominalVolts() {
        return nominalVolts;
    }

    public boolean isLithium() {
        return this != NIMH && this != LEAD_ACID;
    }

    /** The chemistry a person wrote: label or name in any case, with or without hyphen or space. */
    public static Chemistry parse(String written) {
        String key = key(written);
        return Arrays.stream(values())
                .filter(chemistry -> key(chemistry.label).equals(key)
                        || key(chemistry.name()).equals(key))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "chemistry",
                        "chemistry is \"" + written + "\"; expected one of "
                                + Arrays.stream(values()).map(Chemistry::label).collect(Collectors.joining(", "))
                                + ". Read it off the pack's label."));
    }

    private static String key(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
