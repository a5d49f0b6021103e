package fettle.book.store;

import static fettle.book.BookFixtures.IN_USE;
import static fettle.book.BookFixtures.NOON;
import static fettle.book.BookFixtures.note;

import fettle.book.BookFixtures;
import fettle.book.record.Shapes;
import java.nio.file.Path;

/** A process of its own that enters checks and says the number of each one once it is saved. */
public final class EntryWriter {
    private EntryWriter() {}

    public static void main(String[] arguments) {
        Book book = Book.open(Path.of(arguments[0]));
        if (book.items(Shapes.PACK).all().isEmpty()) {
            book.items(Shapes.PACK).add(BookFixtures.pack("P07"), IN_USE, note("added pack P07", "P07"));
        }
        for (long second = 0; ; second++) {
            System.out.println(
                    BookFixtures.addCheck(book, NOON.plusSeconds(second)).id());
            System.out.flush();
        }
    }
}
