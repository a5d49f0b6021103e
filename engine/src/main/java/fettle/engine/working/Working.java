package fettle.engine.working;

import java.util.List;

/** The steps behind an answer, in the order they were taken. */
public record Working(List<Step> steps) {
    public static final Working NONE = new Working(List.of());

    public Working {
        steps = List.copyOf(steps);
    }

    public static Working of(Step... steps) {
        return new Working(List.of(steps));
    }
}
