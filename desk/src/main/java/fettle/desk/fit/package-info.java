/** Which packs suit a craft. */
@NullMarked
package fettle.desk.fit;

import org.jspecify.annotations.NullMarked;
