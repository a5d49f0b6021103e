package fettle.book.store;

import static fettle.book.BookFixtures.IN_USE;
import static fettle.book.BookFixtures.NOON;
import static fettle.book.BookFixtures.note;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.book.BookFixtures;
import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.engine.outing.Outing;
import fettle.engine.pack.Check;
import fettle.engine.units.InputException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UndoTest {
    @TempDir
    Path folder;

    Book book;

    @BeforeEach
    void open() {
        book = Book.open(folder);
        BookFixtures.fill(book);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void takesEveryKindOfAdditionBackNewestFirstAndForthAgain() {
        BookFixtures.fillControls(book);
        Map<String, Object> full = contents();
        for (long id = 12; id >= 1; id--) {
            undo(id);
        }
        assertThat(contents().values()).allMatch(items -> ((List<?>) items).isEmpty());
        for (long undoing = 24; undoing >= 13; undoing--) {
            undo(undoing);
        }
        assertThat(contents()).isEqualTo(full);
    }

    @Test
    void takesAnEditAndARetirementBack() {
        Map<String, Object> before = contents();
        long edit = book.items(Shapes.PACK)
                .replace(1, BookFixtures.pack("P17"), note("renamed", "P17"))
                .id();
        Row retired = Row.empty().withFlag("retired", true).with("retired_reason", "swollen");
        long retirement =
                book.items(Shapes.PACK).mark(1, retired, note("retired", "P17")).id();
        Map<String, Object> after = contents();
        undo(retirement);
        undo(edit);
        assertThat(contents()).isEqualTo(before);
        undo(13);
        undo(12);
        assertThat(contents()).isEqualTo(after);
    }

    @Test
    void keepsAWithdrawnEntryAndWhatWasTyped() {
        undo(5);
        assertThat(book.items(Shapes.CHECK).ofPack(1)).isEmpty();
        String typed =
                book.inTransaction(handle -> handle.createQuery("SELECT typed FROM pack_check WHERE withdrawn = 1")
                        .mapTo(String.class)
                        .one());
        assertThat(typed).isEqualTo("P07 3.84 3.83 3.85 3.84");
        assertThat(book.journal().find(5).orElseThrow().row().sentence()).isEqualTo("check of P07");
    }

    @Test
    void refusesWhenALaterChangeOfTheSameItemStandsInTheWay() {
        book.items(Shapes.PACK).replace(1, BookFixtures.pack("P17"), note("renamed P07", "P17"));
        book.items(Shapes.PACK).replace(1, BookFixtures.pack("P18"), note("renamed P17", "P18"));
        assertThatThrownBy(() -> undo(10))
                .isInstanceOf(InputException.class)
                .hasMessage("#10 (renamed P07) cannot be undone: #11 (renamed P17) came later. Undo that first.");
        undo(11);
        undo(10);
        assertThat(book.items(Shapes.PACK).named("P07")).isPresent();
    }

    @Test
    void refusesToWithdrawAPackThatHasEntries() {
        assertThatThrownBy(() -> undo(1))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("4 other entries refer to P07")
                .hasMessageContaining("Retire it instead");
    }

    @Test
    void refusesToWithdrawKitThatAnOutingNames() {
        book.items(Shapes.PACK).add(BookFixtures.pack("P08"), IN_USE, note("added pack P08", "P08"));
        long added = book.journal().recent(0, 1).get(0).row().id();
        BookFixtures.fillOuting(book);
        Stored<Outing> outing = book.items(Shapes.OUTING).all().get(0);
        Outing named = BookFixtures.outing("Lake day");
        book.items(Shapes.OUTING)
                .replace(
                        outing.id(),
                        new Outing(
                                named.name(),
                                named.zone(),
                                named.times(),
                                named.ambientKelvins(),
                                named.attended(),
                                named.feeds(),
                                List.of("P07", "P08"),
                                named.wishes(),
                                named.goals(),
                                named.storageBy(),
                                named.choices(),
                                named.happened(),
                                named.note()),
                        note("changed outing Lake day", "Lake day"));
        assertThatThrownBy(() -> undo(added)).hasMessageContaining("1 other entry refers to");
    }

    @Test
    void refusesToBringAnEntryBackToAWithdrawnPack() {
        book.items(Shapes.PACK).add(BookFixtures.pack("P08"), IN_USE, note("added pack P08", "P08"));
        Row ofSecond = BookFixtures.ofPack(2, "");
        long entry = book.items(Shapes.CHECK)
                .add(BookFixtures.check(NOON), ofSecond, note("check of P08", "P08"))
                .id();
        long withdrawn = undo(entry);
        undo(10);
        assertThatThrownBy(() -> undo(withdrawn))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("what it refers to is itself undone");
    }

    @Test
    void refusesToBringBackANameThatIsTakenAgain() {
        book.items(Shapes.CRAFT).add(BookFixtures.craft("Merlin"), IN_USE, note("added craft Merlin", "Merlin"));
        long withdrawn = undo(10);
        book.items(Shapes.CRAFT).add(BookFixtures.craft("merlin"), IN_USE, note("added craft merlin", "merlin"));
        assertThatThrownBy(() -> undo(withdrawn))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("already in this book");
    }

    @Test
    void refusesToUndoTwiceAndToUndoWhatIsNotThere() {
        undo(5);
        assertThatThrownBy(() -> undo(5)).isInstanceOf(InputException.class).hasMessageContaining("undone already");
        assertThatThrownBy(() -> undo(500)).isInstanceOf(InputException.class).hasMessageContaining("no #500");
    }

    @Test
    void saysOfEachChangeWhetherItIsUndoneAndCanBe() {
        undo(5);
        Map<Long, JournalLine> lines = new LinkedHashMap<>();
        book.journal().recent(0, 100).forEach(line -> lines.put(line.row().id(), line));
        assertThat(lines.get(5L).undone()).isTrue();
        assertThat(lines.get(5L).undoable()).isFalse();
        assertThat(lines.get(10L).undoable()).isTrue();
        assertThat(lines.get(1L).undoable()).isFalse();
        assertThat(lines.get(6L).undoable()).isTrue();
    }

    @Test
    void agreesWithItselfOnWhatCanBeUndoneThroughLongChains() {
        long add = BookFixtures.addCheck(book, NOON.plusSeconds(7)).id();
        long undone = undo(add);
        long redone = undo(undone);
        assertThat(book.journal().find(add).orElseThrow().undone()).isFalse();
        assertThat(book.journal().find(redone).orElseThrow().undoable()).isTrue();
        undo(add);
        List<Check> checks =
                book.items(Shapes.CHECK).ofPack(1).stream().map(Stored::item).toList();
        assertThat(checks).containsExactly(BookFixtures.check(NOON));
    }

    private long undo(long id) {
        return book.journal().undo(id, note("undid #" + id, "")).id();
    }

    private Map<String, Object> contents() {
        Map<String, Object> contents = new LinkedHashMap<>();
        Shapes.ALL.forEach(
                shape -> contents.put(shape.kind().table(), book.items(shape).all()));
        return contents;
    }
}
