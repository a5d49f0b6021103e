package fettle.engine.health.identification;

/** How many resistor-capacitor pairs to look for. */
public enum PairCount {
    ONE,
    TWO,
    /** Two if they explain clearly more than one, for the number of independent readings. */
    AS_DATA_TELL
}
