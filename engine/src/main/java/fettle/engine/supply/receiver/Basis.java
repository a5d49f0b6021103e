package fettle.engine.supply.receiver;

/** Where a servo's currents come from, the best first. */
public enum Basis {
    MEASURED("measured sweep"),
    DATA("maker's data"),
    ASSUMED("assumed");

    private final String label;

    Basis(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
