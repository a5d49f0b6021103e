package fettle.workshop;

import java.util.List;

/**
 * What the registers of a pack say.
 *
 * @param registers name, raw word and meaning of each, in the order of their command codes
 * @param check what to enter to take it as a check, behind the pack's tag; empty if the pack was not at rest
 * @param remarks what was passed over, or keeps it from being a check, in sentences
 */
public record RegisterReading(List<Entry> registers, String check, List<String> remarks) {
    public RegisterReading {
        registers = List.copyOf(registers);
        remarks = List.copyOf(remarks);
    }

    /** One register. */
    public record Entry(String name, String raw, String meaning) {}
}
