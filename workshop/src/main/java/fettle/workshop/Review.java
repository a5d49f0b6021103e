package fettle.workshop;

/** Assesses packs as they are now. */
public final class Review {
    /** The morning review of every pack in use. */
    public ShelfReview shelf() {
        throw new UnsupportedOperationException();
    }

    /** One pack in full; throws {@link UnknownNameException} where there is none. */
    public PackFile pack(String tag) {
        throw new UnsupportedOperationException();
    }
}
