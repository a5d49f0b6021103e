/** Tables of published cells, one file a source. Model code holds no cell data. */
@NullMarked
package fettle.engine.cell.published;

import org.jspecify.annotations.NullMarked;
