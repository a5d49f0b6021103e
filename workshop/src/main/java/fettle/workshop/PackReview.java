package fettle.workshop;

import fettle.engine.charge.Task;
import fettle.engine.pack.Assessment;
import java.util.List;

/** One pack's state and what to do with it, in order. */
public record PackReview(Assessment assessment, List<Task> tasks) {}
