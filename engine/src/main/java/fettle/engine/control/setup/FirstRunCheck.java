package fettle.engine.control.setup;

import java.util.List;

/** What to check by hand before the first run after a change; no sheet replaces it. */
public enum FirstRunCheck {
    DIRECTION("Direction", "Move each stick and see that the craft's surface goes the way the craft must turn."),
    CENTRE("Centre", "Sticks and trims centred: every surface stands at its neutral, arms where the sheet says."),
    FREE_MOVEMENT(
            "Free movement",
            "Full travel of each stick, and both in the corners: nothing hums, rubs or stops early; rods and keepers are"
                    + " secured."),
    THROWS("Throws", "Measure throws at the chord of the sheet, on each rate."),
    RANGE("Range", "Do the maker's range check with the motor off, then running with the craft held down."),
    FAILSAFE(
            "Failsafe",
            "Propeller off or wheels clear: switch the transmitter off and see the motor stop and surfaces go where they should."),
    POWER(
            "Power",
            "Move all surfaces at once: the receiver keeps working and its voltage stays above the sheet's margin.");

    private final String title;
    private final String instruction;

    FirstRunCheck(String title, String instruction) {
        this.title = title;
        this.instruction = instruction;
    }

    public String title() {
        return title;
    }

    public String instruction() {
        return instruction;
    }

    /** All of them, in the order to do them. */
    public static List<FirstRunCheck> inOrder() {
        return List.of(values());
    }
}
