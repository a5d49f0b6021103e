/** The project's documents held against the project. */
@NullMarked
package fettle.documents;

import org.jspecify.annotations.NullMarked;
