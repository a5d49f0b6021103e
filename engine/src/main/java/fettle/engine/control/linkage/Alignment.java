package fettle.engine.control.linkage;

/** Which two parts come into line at the end of a linkage's travel. */
public enum Alignment {
    HORN_STRETCHED("rod and horn in line, stretched", "the surface locks or snaps over"),
    HORN_FOLDED("rod and horn in line, folded", "the surface locks or snaps over"),
    ARM_STRETCHED("rod and servo arm in line, stretched", "the surface stops and turns back"),
    ARM_FOLDED("rod and servo arm in line, folded", "the surface stops and turns back"),
    ALL_IN_LINE("arm, rod and horn in line", "the surface may go on either way");

    private final String label;
    private final String consequence;

    Alignment(String label, String consequence) {
        this.label = label;
        this.consequence = consequence;
    }

    static Alignment ofHorn(Closure.Meeting meeting) {
        return switch (meeting) {
            case STRETCHED -> HORN_STRETCHED;
            case FOLDED -> HORN_FOLDED;
            case TOUCHING -> ALL_IN_LINE;
        };
    }

    static Alignment ofArm(Closure.Meeting meeting) {
        return switch (meeting) {
            case STRETCHED -> ARM_STRETCHED;
            case FOLDED -> ARM_FOLDED;
            case TOUCHING -> ALL_IN_LINE;
        };
    }

    public String label() {
        return label;
    }

    /** What happens there. */
    public String consequence() {
        return consequence;
    }

    /** Whether the surface toggles there; otherwise the servo arm is on its dead centre. */
    public boolean toggle() {
        return this == HORN_STRETCHED || this == HORN_FOLDED;
    }
}
