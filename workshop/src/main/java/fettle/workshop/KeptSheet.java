package fettle.workshop;

import fettle.engine.control.setup.Difference;
import fettle.engine.control.setup.SetUpSheet;
import java.util.List;

/**
 * A set-up sheet in the book.
 *
 * @param id its number
 * @param sheet the sheet
 * @param typed its surfaces as they would be typed, one a line
 * @param differences what differs from the sheet before it; empty for the first
 */
public record KeptSheet(long id, SetUpSheet sheet, List<String> typed, List<Difference> differences) {
    public KeptSheet {
        typed = List.copyOf(typed);
        differences = List.copyOf(differences);
    }
}
