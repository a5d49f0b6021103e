/** Today: what needs doing, soonest first, and every pack in one table. */
@NullMarked
package fettle.desk.today;

import org.jspecify.annotations.NullMarked;
