package fettle.desk.passport;

import fettle.desk.paper.Report;

/**
 * A passport to read and print.
 *
 * @param tag the pack's tag
 * @param report what it says
 */
public record PassportPage(String tag, Report report) {}
