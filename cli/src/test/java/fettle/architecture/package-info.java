/** Holds the house of docs/ARCHITECTURE.md: which package may see which, and who may touch the outside world. */
@NullMarked
package fettle.architecture;

import org.jspecify.annotations.NullMarked;
