package fettle.book.record;

import fettle.engine.units.InputException;

/** Reference to a craft that must be registered. */
final class CraftReference {
    private static final String COLUMN = "craft_id";

    private CraftReference() {}

    static Row row(String craft, References references) {
        Long id = references.id(Kind.CRAFT, craft);
        if (id == null) {
            throw new InputException(
                    "craft", "craft \"" + craft + "\" is not in this book. Add the craft first: craft add.");
        }
        return Row.empty().with(COLUMN, id);
    }

    static String name(Row row, References references) {
        String name = references.name(Kind.CRAFT, row.whole(COLUMN));
        if (name == null) {
            throw new UnreadableRowException("craft_id " + row.whole(COLUMN) + " is no craft of this book");
        }
        return name;
    }
}
