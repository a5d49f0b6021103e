package fettle.engine.outing;

import java.time.Instant;

/**
 * The corners of the day.
 *
 * @param leaveHome when home is left
 * @param arrive when the field is reached
 * @param packUp when the last pack is off the field's chargers
 * @param backHome when home is reached
 */
public record OutingTimes(Instant leaveHome, Instant arrive, Instant packUp, Instant backHome) {}
