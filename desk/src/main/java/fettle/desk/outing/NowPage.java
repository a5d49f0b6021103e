package fettle.desk.outing;

import java.util.List;

/**
 * What to do now and next, for the phone.
 *
 * @param name the outing
 * @param encoded its name in an address
 * @param clock the time now
 * @param going what goes on
 * @param next what comes
 * @param toPutBack runs of which what was put back is not noted
 * @param faults what was wrong with the last tap
 */
public record NowPage(
        String name,
        String encoded,
        String clock,
        List<Card> going,
        List<Card> next,
        List<Card> toPutBack,
        List<String> faults) {
    public NowPage {
        going = List.copyOf(going);
        next = List.copyOf(next);
        toPutBack = List.copyOf(toPutBack);
        faults = List.copyOf(faults);
    }

    /**
     * One run or charge.
     *
     * @param name its name, to begin and end it by
     * @param what what to do
     * @param when when it is planned
     * @param due how far off it is
     * @param late whether it should have begun or ended
     * @param caution what to mind; may be empty
     */
    public record Card(String name, String what, String when, String due, boolean late, String caution) {}
}
