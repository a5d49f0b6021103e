package fettle.workshop.entry;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Run;

/** What a line asks to be saved. */
public sealed interface Entry {
    /** A set of rest readings. */
    record OfCheck(Check check) implements Entry {}

    /** A charge noted by hand. */
    record OfCharge(ChargeRecord charge) implements Entry {}

    /** A use of the pack in a craft. */
    record OfRun(Run run) implements Entry {}
}
