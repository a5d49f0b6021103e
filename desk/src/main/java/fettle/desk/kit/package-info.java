/** Kit: packs, craft, chargers and sources; adding, editing, retiring and restoring them. */
@NullMarked
package fettle.desk.kit;

import org.jspecify.annotations.NullMarked;
