/** The open book: one SQLite file, its lock, its transactions, its items and its journal. The only SQL beside archive. */
@NullMarked
package fettle.book.store;

import org.jspecify.annotations.NullMarked;
