/** The record: schema, migrations, journal, export and backup. */
@NullMarked
package fettle.book;

import org.jspecify.annotations.NullMarked;
