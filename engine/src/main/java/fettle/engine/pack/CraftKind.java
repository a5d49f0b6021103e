package fettle.engine.pack;

/** Kinds of craft. */
public enum CraftKind {
    PLANE("plane"),
    GLIDER("glider"),
    HELICOPTER("helicopter"),
    MULTIROTOR("multirotor"),
    CAR("car"),
    BOAT("boat"),
    OTHER("other");

    private final String label;

    CraftKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
