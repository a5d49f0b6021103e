/** Which packs suit a craft, alone or joined, ranked with reasons. */
@NullMarked
package fettle.engine.pack.fit;

import org.jspecify.annotations.NullMarked;
