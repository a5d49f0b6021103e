package fettle.book.archive;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fettle.book.store.Book;
import fettle.book.store.LogFolder;
import fettle.book.store.TraceFiles;
import fettle.book.store.UnusableBookException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Reads an archive back into an empty book, journal and withdrawn entries included. All of it or nothing. */
public final class Import {
    private final Path path;
    private final Handle handle;
    private final LogFolder logs;

    private Import(Path path, Handle handle, LogFolder logs) {
        this.path = path;
        this.handle = handle;
        this.logs = logs;
    }

    /**
     * Reads the archive, then looks the whole book through before it is kept.
     *
     * @return what was done, a line each
     * @throws UnusableBookException if the book is not empty, or the archive is not whole; nothing is changed then
     */
    public static List<String> read(Book book, Path path) {
        return book.inTransaction(
                handle -> new Import(path, handle, book.folder().logs()).run());
    }

    private List<String> run() {
        List<ArchiveTable> tables = ArchiveTable.all(handle);
        requireEmpty(tables);
        ArchiveFile archive = ArchiveFile.read(path, tables);
        handle.execute("PRAGMA defer_foreign_keys = ON");
        int rows = 0;
        for (ArchiveTable table : tables) {
            rows += insert(table, archive);
        }
        List<String> faults = Verification.of(handle);
        if (!faults.isEmpty()) {
            throw ArchiveFile.refusal(path, faults.get(0));
        }
        archive.unpackLogs(logs);
        List<String> done = new ArrayList<>(List.of(
                "read " + path + ", " + tables.size() + " tables, " + rows + " rows", "verified the book: whole"));
        done.addAll(TraceFiles.faults(handle, logs));
        return done;
    }

    private void requireEmpty(List<ArchiveTable> tables) {
        for (ArchiveTable table : tables) {
            if (handle.createQuery("SELECT count(*) FROM " + table.name())
                            .mapTo(Long.class)
                            .one()
                    > 0) {
                throw new UnusableBookException(
                        "this book is not empty. Import into a new one: name an empty folder with --book.");
            }
        }
    }

    private int insert(ArchiveTable table, ArchiveFile archive) {
        Manifest.Entry entry = archive.entry(table);
        try (CsvReader<CsvRecord> csv =
                CsvReader.builder().ofCsvRecord(new ByteArrayInputStream(archive.csv(table)), StandardCharsets.UTF_8)) {
            Iterator<CsvRecord> records = csv.iterator();
            requireHeader(table, records);
            int rows = insert(table, records);
            if (rows != entry.rows()) {
                throw refusal(table, "has " + rows + " rows; its manifest says " + entry.rows());
            }
            return rows;
        } catch (CsvParseException | UncheckedIOException malformed) {
            throw refusal(table, "is not well-formed CSV");
        } catch (IOException unreadable) {
            throw refusal(table, "cannot be read to the end");
        } catch (JdbiException refused) {
            throw refusal(table, "holds a row the book does not take");
        }
    }

    private void requireHeader(ArchiveTable table, Iterator<CsvRecord> records) {
        if (!records.hasNext() || !records.next().getFields().equals(table.header())) {
            throw refusal(table, "does not begin with the columns " + String.join(", ", table.header()));
        }
    }

    private int insert(ArchiveTable table, Iterator<CsvRecord> records) {
        String columns = String.join(", ", table.header());
        String places = "?, ".repeat(table.columns().size() - 1) + "?";
        int rows = 0;
        try (PreparedBatch batch =
                handle.prepareBatch("INSERT INTO " + table.name() + " (" + columns + ") VALUES (" + places + ")")) {
            while (records.hasNext()) {
                bind(batch, table, records.next());
                rows++;
            }
            if (rows > 0) {
                batch.execute();
            }
        }
        return rows;
    }

    private void bind(PreparedBatch batch, ArchiveTable table, CsvRecord record) {
        if (record.getFieldCount() != table.columns().size()) {
            throw refusal(
                    table,
                    "line " + record.getStartingLineNumber() + " has " + record.getFieldCount() + " fields; expected "
                            + table.columns().size());
        }
        for (int column = 0; column < table.columns().size(); column++) {
            batch.bind(column, value(table, table.columns().get(column), record, column));
        }
        batch.add();
    }

    private @Nullable Object value(ArchiveTable table, ArchiveTable.Column column, CsvRecord record, int index) {
        String text = record.getField(index);
        if (text.isEmpty() && column.optional()) {
            return null;
        }
        try {
            return switch (column.type()) {
                case INTEGER -> Long.valueOf(text);
                case REAL -> Double.valueOf(text);
                case TEXT -> text;
            };
        } catch (NumberFormatException wrong) {
            throw refusal(
                    table,
                    "line " + record.getStartingLineNumber() + ", column " + (index + 1) + " (" + column.name()
                            + "): \"" + text + "\" is not a number");
        }
    }

    private UnusableBookException refusal(ArchiveTable table, String why) {
        return ArchiveFile.refusal(path, table.file() + " " + why);
    }
}
