package fettle.engine.control.sweep;

/** Which way the pulse went. */
public enum Direction {
    RISING,
    FALLING
}
