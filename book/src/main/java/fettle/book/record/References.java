package fettle.book.record;

import org.jspecify.annotations.Nullable;

/** Finds items by id or by name, so that records can speak of names while rows keep ids that survive renaming. */
public interface References {
    /** The present name of an item; {@code null} for no id. */
    @Nullable
    String name(Kind kind, @Nullable Long id);

    /** The id of the item of that name in any case; {@code null} where there is none or no name was given. */
    @Nullable
    Long id(Kind kind, @Nullable String name);
}
