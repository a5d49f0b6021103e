package fettle.book.store;

import static fettle.book.BookFixtures.IN_USE;
import static fettle.book.BookFixtures.NOON;
import static fettle.book.BookFixtures.note;
import static fettle.book.BookFixtures.ofPack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.BookFixtures;
import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.engine.outing.Outing;
import fettle.engine.outing.RunWish;
import fettle.engine.pack.Pack;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookOnSqliteTest {
    @TempDir
    Path folder;

    Book book;

    @BeforeEach
    void open() {
        book = Book.open(folder);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void givesBackEveryKindOfItemAsItWasAfterReopening() {
        BookFixtures.fill(book);
        BookFixtures.fillControls(book);
        BookFixtures.fillOuting(book);
        reopen();
        assertThat(only(book.items(Shapes.PACK).all())).isEqualTo(BookFixtures.pack("P07"));
        assertThat(only(book.items(Shapes.CRAFT).all())).isEqualTo(BookFixtures.craft("Kestrel"));
        assertThat(only(book.items(Shapes.SOURCE).all())).isEqualTo(BookFixtures.source("Trolley"));
        assertThat(only(book.items(Shapes.CHARGER).all())).isEqualTo(BookFixtures.charger("Bench left", "Trolley"));
        assertThat(only(book.items(Shapes.CHECK).ofPack(1))).isEqualTo(BookFixtures.check(NOON));
        assertThat(only(book.items(Shapes.CHARGE).ofPack(1))).isEqualTo(BookFixtures.charge(NOON.plusSeconds(60)));
        assertThat(only(book.items(Shapes.RUN).ofPack(1))).isEqualTo(BookFixtures.run(NOON.plusSeconds(90), "Kestrel"));
        assertThat(book.items(Shapes.RULE).all())
                .extracting(rule -> rule.item().packTag())
                .containsExactly(null, "P07");
        assertThat(only(book.items(Shapes.SERVO).all())).isEqualTo(BookFixtures.servo("wing"));
        assertThat(only(book.items(Shapes.SET_UP_SHEET).all())).isEqualTo(BookFixtures.sheet("Kestrel"));
        assertThat(only(book.items(Shapes.SURFACE_SWEEP).all())).isEqualTo(BookFixtures.sweep("Kestrel"));
        assertThat(only(book.items(Shapes.OUTING).all())).isEqualTo(BookFixtures.outing("Lake day"));
        assertThat(only(book.items(Shapes.OUTING_PLAN).all())).isEqualTo(BookFixtures.plan("Lake day"));
    }

    @Test
    void outingsFollowTheRenamingOfTheirKit() {
        BookFixtures.fill(book);
        BookFixtures.fillOuting(book);
        book.items(Shapes.PACK).replace(1, BookFixtures.pack("P17"), note("renamed P07", "P17"));
        book.items(Shapes.CRAFT).replace(1, BookFixtures.craft("Merlin"), note("renamed Kestrel", "Merlin"));
        Outing outing = only(book.items(Shapes.OUTING).all());
        assertThat(outing.packs()).containsExactly("P17");
        assertThat(outing.wishes()).extracting(RunWish::craft).containsOnly("Merlin");
    }

    @Test
    void keepsWhatWasTyped() {
        BookFixtures.fill(book);
        assertThat(book.items(Shapes.CHECK).ofPack(1).get(0).row().text("typed"))
                .isEqualTo("P07 3.84 3.83 3.85 3.84");
    }

    @Test
    void findsNamesInAnyCase() {
        BookFixtures.fill(book);
        assertThat(book.items(Shapes.PACK).named(" p07")).isPresent();
        assertThat(book.items(Shapes.CHARGER).named("BENCH LEFT")).isPresent();
        assertThat(book.items(Shapes.PACK).named("P70")).isEmpty();
    }

    @Test
    void refusesASecondItemOfTheSameNameInAnyCaseAndSavesNothing() {
        BookFixtures.fill(book);
        long changes = changes();
        assertThatThrownBy(() -> book.items(Shapes.PACK).add(BookFixtures.pack("p07"), IN_USE, note("again", "p07")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("p07 is already in this book");
        assertThat(changes()).isEqualTo(changes);
    }

    @Test
    void refusesAChargerWhoseSourceIsNotRegistered() {
        assertThatThrownBy(() -> book.items(Shapes.CHARGER)
                        .add(BookFixtures.charger("Bench", "Nowhere"), IN_USE, note("added", "Bench")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("source \"Nowhere\" is not in this book");
        assertThat(changes()).isZero();
    }

    @Test
    void letsEntriesAndLimitsFollowARenamedPackAndCraft() {
        BookFixtures.fill(book);
        Pack renamed = BookFixtures.pack("P17");
        book.items(Shapes.PACK).replace(1, renamed, note("renamed", "P17"));
        book.items(Shapes.CRAFT).replace(1, BookFixtures.craft("Hobby"), note("renamed", "Hobby"));
        assertThat(only(book.items(Shapes.PACK).all())).isEqualTo(renamed);
        assertThat(only(book.items(Shapes.RUN).ofPack(1)).craft()).isEqualTo("Hobby");
        assertThat(book.items(Shapes.RULE).all().get(1).item().packTag()).isEqualTo("P17");
    }

    @Test
    void savesAllOfSeveralChangesOrNone() {
        assertThatThrownBy(() -> book.inTransaction(handle -> {
                    BookFixtures.fill(book);
                    throw new IllegalStateException("the last of them failed");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(changes()).isZero();
        assertThat(book.items(Shapes.PACK).all()).isEmpty();
    }

    @Test
    void numbersChangesFromOneWithoutGapsAlsoAfterARefusal() {
        BookFixtures.fill(book);
        assertThatThrownBy(() -> book.items(Shapes.CHECK)
                        .add(BookFixtures.check(NOON), ofPack(99, ""), note("check of nothing", "")))
                .isInstanceOf(UnusableBookException.class);
        BookFixtures.addCheck(book, NOON.plusSeconds(5));
        List<Long> ids = book.journal().recent(0, 100).stream()
                .map(line -> line.row().id())
                .toList();
        assertThat(ids).containsExactly(10L, 9L, 8L, 7L, 6L, 5L, 4L, 3L, 2L, 1L);
    }

    @Test
    void tellsOfAFullDiskAndKeepsWhatWasSavedBefore() {
        BookFixtures.fill(book);
        int pages = book.inTransaction(handle ->
                handle.createQuery("PRAGMA page_count").mapTo(Integer.class).one());
        book.inTransaction(handle -> handle.execute("PRAGMA max_page_count = " + pages));
        String longNote = "x".repeat(100_000);
        Row typed = ofPack(1, longNote);
        assertThatThrownBy(
                        () -> book.items(Shapes.CHARGE).add(BookFixtures.charge(NOON), typed, note("charged", "P07")))
                .isInstanceOf(UnusableBookException.class)
                .hasMessageContaining("the disk is full")
                .hasMessageContaining("Free some space");
        assertThat(changes()).isEqualTo(9);
        assertThat(book.items(Shapes.CHARGE).ofPack(1)).hasSize(1);
    }

    private long changes() {
        return book.journal().recent(0, 1_000).size();
    }

    private static <T> T only(List<Stored<T>> items) {
        assertThat(items).hasSize(1);
        return items.get(0).item();
    }

    private void reopen() {
        book.close();
        book = Book.open(folder);
    }
}
