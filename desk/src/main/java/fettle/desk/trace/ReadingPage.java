package fettle.desk.trace;

/**
 * How far the reading of a long log is.
 *
 * @param token what the log waits under
 * @param file its name
 * @param pack the pack it is of
 * @param perCent 0 … 99
 */
public record ReadingPage(String token, String file, String pack, int perCent) {}
