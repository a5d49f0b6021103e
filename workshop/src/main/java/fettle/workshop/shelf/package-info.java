/** Rows of a spreadsheet, or typed one a line, as entry lines. Nothing is read here beyond what a heading says. */
@NullMarked
package fettle.workshop.shelf;

import org.jspecify.annotations.NullMarked;
