package fettle.workshop;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import org.jspecify.annotations.Nullable;

/**
 * An outing as it stands.
 *
 * @param outing the outing
 * @param plan its latest plan; {@code null} before the first
 * @param outdated what has changed since the plan was made; empty if nothing
 * @param putAway whether it is put away
 */
public record OutingState(Outing outing, @Nullable KeptPlan plan, String outdated, boolean putAway) {}
