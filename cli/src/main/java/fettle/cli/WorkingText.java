package fettle.cli;

import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;

/** The steps behind a figure, as text. */
final class WorkingText {
    private WorkingText() {}

    static void add(Working working, PackText.Detail detail, List<String> lines) {
        if (detail == PackText.Detail.ANSWERS) {
            return;
        }
        for (Step step : working.steps()) {
            lines.addAll(Wrapped.lines("·", step.title() + ": " + step.formula()));
            step.inputs().forEach(input -> lines.addAll(Wrapped.lines("", "  " + input)));
            lines.addAll(Wrapped.lines("", "→ " + step.result()));
            lines.addAll(Wrapped.lines(
                    "",
                    "(" + step.citation().text() + "; "
                            + step.citation().status().label() + ")"));
        }
    }
}
