/** The rules in force and changing them. */
@NullMarked
package fettle.desk.rules;

import org.jspecify.annotations.NullMarked;
