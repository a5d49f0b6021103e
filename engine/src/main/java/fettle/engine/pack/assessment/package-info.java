/**
 * The state of a pack as a pure function of its record, the rules and now. Each inspection asks one question and answers
 * with findings; a question without a finding is a check passed. Current is positive when discharging; volts are at rest.
 */
@NullMarked
package fettle.engine.pack.assessment;

import org.jspecify.annotations.NullMarked;
