/** The same powers as the pages, as JSON over HTTP, described by an OpenAPI document. */
@NullMarked
package fettle.desk.api;

import org.jspecify.annotations.NullMarked;
