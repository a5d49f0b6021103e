/**
 * Labels for packs: what stands on one, and the grids of label sheets by their measures. Lengths are millimetres, as
 * sheets are sold; grids are common practice, no source: measure a sheet before printing on it.
 */
@NullMarked
package fettle.workshop.label;

import org.jspecify.annotations.NullMarked;
