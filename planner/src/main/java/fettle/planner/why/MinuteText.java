package fettle.planner.why;

/** How a minute of the problem is told to a person, in the time of their place. */
@FunctionalInterface
public interface MinuteText {
    String at(int minute);
}
