package fettle.workshop.entry;

import fettle.engine.units.Figure;
import java.util.List;
import java.util.Optional;

/** The pack a line is about. */
final class Tag {
    static final String BEGIN = "Begin with the pack's tag, e.g. P07 3.84 3.83 3.85 3.84.";

    private Tag() {}

    /** The registered pack of a tag; a problem if there is none or it is out of use. */
    static Optional<KnownPack> pack(Word tag, KnownKit kit, Remarks remarks) {
        Optional<KnownPack> known = kit.pack(tag.text());
        if (known.isEmpty()) {
            remarks.problem(tag, unknown(tag, kit));
        } else if (known.get().retired()) {
            remarks.problem(
                    tag,
                    known.get().pack().tag() + " is retired, so nothing is entered for it. Restore it first if it is "
                            + "in use again.");
        }
        return known;
    }

    private static String unknown(Word tag, KnownKit kit) {
        List<String> near = kit.tagsNear(tag.text());
        if (near.isEmpty()) {
            return "there is no pack in this book yet. Add it first, with its chemistry and cell count.";
        }
        if (Figure.of(tag.text()).isPresent()) {
            return "which pack is it? " + BEGIN;
        }
        return "there is no pack \"" + tag.text() + "\" in this book. Begin with a pack's tag; nearest: "
                + String.join(", ", near) + ".";
    }
}
