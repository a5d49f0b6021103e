package fettle.engine.control;

import java.util.List;

/** What to mind while the hands are at it; shown where the action is taken. */
public enum Caution {
    PROPELLER_OFF("Take the propeller off, or the blades of a helicopter, before the receiver has power."),
    LINKAGE_FREE("Take the linkage off before any full-travel move; join it when the ends are known."),
    FINGERS_CLEAR("Keep fingers out of arms, horns and hinges while there is power."),
    POWER_OFF("Switch the power off before moving a servo arm or a horn."),
    STOP_AT_BINDING("Stop at the first sign of binding: a hum, heat or a rise in current."),
    MAKER_FIRST("The maker's instructions, your club's rules and local codes come first.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }

    /** For anything that moves a surface under power. */
    public static List<Caution> moving() {
        return List.of(PROPELLER_OFF, LINKAGE_FREE, FINGERS_CLEAR, STOP_AT_BINDING, MAKER_FIRST);
    }

    /** For changes of arm, horn or rod. */
    public static List<Caution> refitting() {
        return List.of(POWER_OFF, PROPELLER_OFF, FINGERS_CLEAR, STOP_AT_BINDING, MAKER_FIRST);
    }
}
