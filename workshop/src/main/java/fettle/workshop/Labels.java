package fettle.workshop;

import fettle.engine.pack.Pack;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import fettle.workshop.label.PackLabel;
import java.util.List;

/** Makes labels for packs. Thread-safe. */
public final class Labels {
    private static final int MOST = 1000;

    private final Shelf<Pack> packs;
    private final Rules rules;

    Labels(Shelf<Pack> packs, Rules rules) {
        this.packs = packs;
        this.rules = rules;
    }

    /**
     * Labels of the packs named, in that order; of every pack in use where none is.
     *
     * @param sheet key of the grid; empty for the usual one
     * @param start first label used, from 1
     * @param address the desk's address that the code leads to; empty for a code of the tag alone
     * @throws InputException for an unknown grid, a start past the sheet or an address that is none
     * @throws UnknownNameException for a tag that is not in the book
     */
    public LabelRun of(List<String> tags, String sheet, int start, String address) {
        LabelGrid grid = sheet.isBlank() ? LabelGrid.USUAL : LabelGrid.of(sheet);
        Faults faults = new Faults();
        if (start < 1 || start > grid.count()) {
            faults.add(
                    "start",
                    "start is " + start + "; expected 1 to " + grid.count()
                            + ", the labels of one sheet. Count along the rows.");
        }
        String base = address.strip().replaceAll("/+$", "");
        if (!base.isEmpty() && !base.matches("https?://[\\x21-\\x7e]+")) {
            faults.add(
                    "address",
                    "address is \"" + address.strip()
                            + "\"; expected one like http://192.168.1.20:4150. Leave it out for a code of the tag.");
        }
        if (tags.size() > MOST) {
            faults.add("packs", tags.size() + " packs are named; at most " + MOST + " are printed at once.");
        }
        faults.refuse();
        return new LabelRun(
                grid, start, named(tags).stream().map(pack -> label(pack, base)).toList());
    }

    private List<Pack> named(List<String> tags) {
        return tags.isEmpty()
                ? packs.list().stream()
                        .filter(known -> !known.retired())
                        .map(Registered::item)
                        .toList()
                : tags.stream().map(tag -> packs.find(tag).item()).toList();
    }

    private PackLabel label(Pack pack, String base) {
        boolean confirmed = pack.identity() == Pack.Identity.CONFIRMED;
        return new PackLabel(
                pack.tag(),
                pack.chemistry().label(),
                pack.arrangement(),
                pack.ratedCapacityCoulombs(),
                // a limit of a chemistry that nobody confirmed would be trusted because it is printed
                confirmed ? rules.limits(pack).si(Quantity.CHARGE_LIMIT) * pack.cellsInSeries() : null,
                base.isEmpty() ? PackLabel.SCHEME + pack.tag() : base + "/kit/packs/" + pack.tag());
    }
}
