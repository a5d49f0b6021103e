package fettle.workshop;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

/** One open book with every use case. Thread-safe; close it to give the book back. */
public final class Workshop implements AutoCloseable {
    /**
     * Opens the book in a folder, making a new one where there is none.
     *
     * @throws fettle.workshop.BookException if it is in use, read-only, damaged, or made by a newer version
     */
    public static Workshop open(Path folder, Clock clock, String actor) {
        throw new UnsupportedOperationException();
    }

    /** Puts a backup in place of the book in a folder; what was there is kept beside it. */
    public static List<String> restore(Path backup, Path folder, Clock clock) {
        throw new UnsupportedOperationException();
    }

    public Shelf<Pack> packs() {
        throw new UnsupportedOperationException();
    }

    public Shelf<Craft> craft() {
        throw new UnsupportedOperationException();
    }

    public Shelf<Charger> chargers() {
        throw new UnsupportedOperationException();
    }

    public Shelf<Source> sources() {
        throw new UnsupportedOperationException();
    }

    public Entries entries() {
        throw new UnsupportedOperationException();
    }

    public Review review() {
        throw new UnsupportedOperationException();
    }

    public History history() {
        throw new UnsupportedOperationException();
    }

    public Rules rules() {
        throw new UnsupportedOperationException();
    }

    public Keeping keeping() {
        throw new UnsupportedOperationException();
    }

    @Override
    public void close() {}
}
