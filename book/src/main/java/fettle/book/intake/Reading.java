package fettle.book.intake;

import fettle.engine.trace.Trace;
import java.util.List;

/**
 * A log read whole.
 *
 * @param trace what it says
 * @param rows rows of figures it has
 * @param remarks what was mended on the way, in sentences
 */
public record Reading(Trace trace, long rows, List<String> remarks) {
    public Reading {
        remarks = List.copyOf(remarks);
    }
}
