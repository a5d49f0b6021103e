package fettle.workshop.worksheet;

import fettle.engine.control.Caution;
import fettle.engine.control.Remark;
import java.util.List;
import java.util.stream.Collectors;

/** Doubts and cautions of the control engine, as a sheet prints them. */
final class ControlNotes {
    private ControlNotes() {}

    static List<String> of(List<Remark> remarks) {
        return remarks.stream()
                .map(remark -> sentence(remark.statement(), remark.advice()))
                .toList();
    }

    static String sentence(String statement, String advice) {
        return statement.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + statement.substring(1) + ". " + advice;
    }

    static String cautions(List<Caution> cautions) {
        return cautions.stream().map(Caution::sentence).collect(Collectors.joining(" "));
    }
}
