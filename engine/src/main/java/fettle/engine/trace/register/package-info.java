/**
 * The registers of a pack that speaks the Smart Battery Data Specification 1.1 (SBS-IF, 11 December 1998), decoded.
 *
 * <p>Sources and status of every packing: the specification's own text was not open to read; command codes, units and bits
 * are as three independent secondary copies agree. In the registers a positive current charges; nothing here turns it.
 */
@NullMarked
package fettle.engine.trace.register;

import org.jspecify.annotations.NullMarked;
