package fettle.desk.kit;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.workshop.Registered;
import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Words already used in the book, offered again so that one thing keeps one name. */
final class KnownWords {
    private final Workshop workshop;

    KnownWords(Workshop workshop) {
        this.workshop = workshop;
    }

    /** What other items say in a field of this key; empty where each item has its own. */
    List<String> of(String key) {
        Stream<String> words = switch (key) {
            case "connector" -> ofPacksAndCraft(Pack::connector, Craft::connector);
            case "keeper" -> ofPacksAndCraft(Pack::keeper, Craft::keeper);
            case "source" -> workshop.sources().list().stream().map(Registered::name);
            default -> Stream.empty();
        };
        return words.filter(word -> !word.isBlank()).distinct().sorted().toList();
    }

    private Stream<String> ofPacksAndCraft(Function<Pack, String> ofPack, Function<Craft, String> ofCraft) {
        return Stream.concat(words(workshop.packs(), ofPack), words(workshop.craft(), ofCraft));
    }

    private static <T> Stream<String> words(Shelf<T> shelf, Function<T, String> word) {
        return shelf.list().stream().map(Registered::item).map(word);
    }
}
