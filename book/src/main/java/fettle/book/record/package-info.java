/** What is stored, apart from how: kinds of item, their rows, and rows to engine records and back. No SQL here. */
@NullMarked
package fettle.book.record;

import org.jspecify.annotations.NullMarked;
