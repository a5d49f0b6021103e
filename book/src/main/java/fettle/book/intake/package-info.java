/**
 * Logs as loggers write them, read into traces: tables with any separator, decimal sign, encoding and packing; columns
 * known by name and unit; time stamps of every kind; and the open battery data format in and out.
 *
 * <p>Reading streams: a log of any length is read in parts of bounded size. Nothing is guessed in silence: what was
 * taken for what is in the {@link fettle.book.intake.Preview}, and what was mended in the reading's remarks.
 */
@NullMarked
package fettle.book.intake;

import org.jspecify.annotations.NullMarked;
