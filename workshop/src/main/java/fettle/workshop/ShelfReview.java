package fettle.workshop;

import fettle.engine.charge.Task;
import java.time.Instant;
import java.util.List;

/**
 * The morning review: every pack in use, and everything to do, soonest first.
 *
 * @param now the instant it was made for
 * @param packs every pack, worst standing first
 * @param tasks all their tasks, soonest first, those with no due time last
 */
public record ShelfReview(Instant now, List<PackReview> packs, List<Task> tasks) {}
