package fettle.workshop;

import fettle.engine.pack.Craft;

/** A craft as typed by a person. Empty text means not stated; currents take {@code 25} or {@code 25 A}. */
public record CraftForm(
        String name,
        String kind,
        String cells,
        String connector,
        String typicalCurrent,
        String peakCurrent,
        String keeper,
        String note) {
    public Craft toCraft() {
        throw new UnsupportedOperationException();
    }

    public static CraftForm of(Craft craft) {
        throw new UnsupportedOperationException();
    }
}
