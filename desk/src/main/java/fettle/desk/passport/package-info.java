/** The passport of a pack: its record, health and standing on paper, for a sale or a club. */
@NullMarked
package fettle.desk.passport;

import org.jspecify.annotations.NullMarked;
