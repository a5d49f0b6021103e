/** Kit: packs, craft, chargers, sources and servos; adding, editing, retiring and restoring them. */
@NullMarked
package fettle.desk.kit;

import org.jspecify.annotations.NullMarked;
