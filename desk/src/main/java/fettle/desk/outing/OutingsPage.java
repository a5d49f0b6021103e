package fettle.desk.outing;

import java.util.List;

/**
 * The list of outings.
 *
 * @param ahead those to come, the next first
 * @param over those that are over
 * @param putAway names of those put away
 */
public record OutingsPage(List<Line> ahead, List<Line> over, List<String> putAway) {
    public OutingsPage {
        ahead = List.copyOf(ahead);
        over = List.copyOf(over);
        putAway = List.copyOf(putAway);
    }

    /** One outing in the list. */
    public record Line(String name, String href, String day, String runs, String plan) {}
}
