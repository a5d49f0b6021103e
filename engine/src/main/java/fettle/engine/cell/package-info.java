/** Single cells: chemistries and their rest-voltage curves. Volts are per cell, charge is a fraction 0 to 1. */
@NullMarked
package fettle.engine.cell;

import org.jspecify.annotations.NullMarked;
