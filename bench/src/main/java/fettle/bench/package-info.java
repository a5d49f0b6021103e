/** Speed of the engine, measured; never a gate. docs/performance.md has the commands and results. */
@NullMarked
package fettle.bench;

import org.jspecify.annotations.NullMarked;
