package fettle.engine.supply.receiver;

/** What the servos do at one time. */
public enum Scenario {
    CRUISE("cruise"),
    HARD_MANOEUVRE("hard manoeuvre"),
    ONE_STALLED("one servo stalled"),
    ALL_STALLED("all servos stalled");

    private final String label;

    Scenario(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
