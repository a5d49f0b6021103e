package fettle.workshop;

/**
 * An item of kit as registered.
 *
 * @param name its tag or name, unique in its shelf (case-insensitive)
 * @param item the item
 * @param retired whether it is out of use
 */
public record Registered<T>(String name, T item, boolean retired) {}
