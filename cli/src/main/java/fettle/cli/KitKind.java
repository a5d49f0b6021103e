package fettle.cli;

import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import java.util.function.Function;

/**
 * One kind of kit, as the command line handles all of them alike.
 *
 * @param word the word on the command line, e.g. {@code pack}
 * @param shelf where the workshop keeps it
 * @param label one item in a few words, without its name
 * @param typed one item as a person would type it: a record of texts
 */
record KitKind<T>(
        String word, Function<Workshop, Shelf<T>> shelf, Function<T, String> label, Function<T, Record> typed) {}
