package fettle.workshop;

import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Run;

/** Takes checks, charges and runs. Each is journalled and can be undone. */
public final class Entries {
    /** What would be saved for an entry line, e.g. {@code P07 3.84 3.83 3.85 3.84 21C rest 2h}. Saves nothing. */
    public EntryPreview preview(String line) {
        throw new UnsupportedOperationException();
    }

    /** Saves an entry line; throws {@link fettle.engine.units.InputException} with every problem if it cannot be. */
    public JournalEntry enter(String line) {
        throw new UnsupportedOperationException();
    }

    /** Saves a check; {@code typed} is the input as typed, kept for ever. */
    public JournalEntry addCheck(String packTag, Check check, String typed) {
        throw new UnsupportedOperationException();
    }

    public JournalEntry addCharge(String packTag, ChargeRecord charge, String typed) {
        throw new UnsupportedOperationException();
    }

    public JournalEntry addRun(String packTag, Run run, String typed) {
        throw new UnsupportedOperationException();
    }
}
