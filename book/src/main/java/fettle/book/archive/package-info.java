/** Keeping the book whole: backup, restore, verify, export and import. */
@NullMarked
package fettle.book.archive;

import org.jspecify.annotations.NullMarked;
