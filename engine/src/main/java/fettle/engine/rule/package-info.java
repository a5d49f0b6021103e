/** Limits as data: every rule has an id, a value, a source and a status, and may be overridden with a reason. */
@NullMarked
package fettle.engine.rule;

import org.jspecify.annotations.NullMarked;
