package fettle.engine.charge;

/** Sorts of work, most urgent first. */
public enum TaskKind {
    INSPECT("inspect"),
    RETIRE("retire"),
    CONFIRM("confirm"),
    COOL("cool"),
    STORE("bring to storage"),
    BALANCE("balance"),
    CHECK("check"),
    CHARGE("charge");

    private final String word;

    TaskKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
