/**
 * What is printed. A sheet or a report is one record; its page and its PDF are drawn from that record alone, so that
 * their figures cannot differ.
 */
@NullMarked
package fettle.desk.paper;

import org.jspecify.annotations.NullMarked;
