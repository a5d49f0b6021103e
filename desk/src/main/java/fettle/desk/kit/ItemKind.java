package fettle.desk.kit;

import fettle.desk.frame.Place;
import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import java.util.List;
import java.util.function.Function;

/**
 * One kind of kit as the desk shows it.
 *
 * @param key its word in addresses, e.g. {@code packs}
 * @param heading its heading, e.g. {@code Packs}
 * @param singular one of it, e.g. {@code pack}
 * @param purpose what it is good for, told where there is none yet
 * @param shelf where it is kept
 * @param name an item's tag or name
 * @param columns of its table, after the name
 * @param summary an item's figures, one per column
 * @param form how it is typed
 * @param place the place of the desk it belongs to
 */
public record ItemKind<T>(
        String key,
        String heading,
        String singular,
        String purpose,
        Function<Workshop, Shelf<T>> shelf,
        Function<T, String> name,
        List<Column> columns,
        Function<T, List<String>> summary,
        ItemForm<T> form,
        Place place) {}
