/** Words of the trade and of the desk, explained where they stand. */
@NullMarked
package fettle.desk.glossary;

import org.jspecify.annotations.NullMarked;
