package fettle.engine.units;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with every fault found in it. */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    public InputException(List<Fault> faults) {
        super(faults.stream().map(Fault::sentence).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    public InputException(String field, String sentence) {
        this(List.of(new Fault(field, sentence)));
    }

    public List<Fault> faults() {
        return faults;
    }
}
