package fettle.book.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import fettle.book.record.Row;
import fettle.book.store.Book;
import fettle.book.store.LogFolder;
import fettle.book.store.RowReader;
import fettle.book.store.SqliteFile;
import fettle.book.store.UnusableBookException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a whole book as one zip of CSV (RFC 4180, UTF-8) with a JSON manifest: journal and withdrawn entries
 * included. The same book always gives the same bytes.
 */
public final class Export {
    /** The first instant a zip can name; the archive tells nothing of when it was written. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 0, 0);

    private Export() {}

    /**
     * Writes the archive, and gives it its name when it is whole.
     *
     * @return what was done, a line each
     * @throws UnusableBookException if the file is there already or cannot be written
     */
    public static List<String> write(Book book, Path file) {
        Path target = file.toAbsolutePath().normalize();
        Path part = Targets.begin(target);
        try {
            Map<String, byte[]> files = new LinkedHashMap<>();
            Manifest manifest = collect(book, files);
            List<String> lost = zip(part, manifest, files, book.folder().logs());
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            int rows = manifest.tables().stream().mapToInt(Manifest.Entry::rows).sum();
            int logs = manifest.logs().size() - lost.size();
            List<String> done = new ArrayList<>(List.of("wrote " + target + ", " + files.size() + " tables, " + rows
                    + " rows, " + logs + (logs == 1 ? " log" : " logs")));
            lost.forEach(log ->
                    done.add("the log " + log + " is missing or damaged in the book, so the archive has not got it"));
            return done;
        } catch (IOException failed) {
            throw new UnusableBookException(
                    "the archive " + target + " cannot be written. Look whether the disk is full.", failed);
        } finally {
            Targets.drop(part);
        }
    }

    private static Manifest collect(Book book, Map<String, byte[]> files) throws IOException {
        List<Manifest.Entry> entries = new ArrayList<>();
        for (Map.Entry<ArchiveTable, List<Row>> table : rows(book).entrySet()) {
            String file = table.getKey().file();
            byte[] csv = csv(table.getKey(), table.getValue());
            files.put(file, csv);
            entries.add(new Manifest.Entry(
                    file, table.getKey().header(), table.getValue().size(), Sha256.of(csv)));
        }
        return new Manifest(
                Manifest.FORMAT, Manifest.FORMAT_VERSION, SqliteFile.SCHEMA_VERSION, entries, logs(files, entries));
    }

    /** The logs the table of them names. */
    private static List<String> logs(Map<String, byte[]> files, List<Manifest.Entry> entries) {
        return entries.stream()
                .map(Manifest.Entry::file)
                .filter(Manifest.LOG_TABLE::equals)
                .flatMap(file -> new String(files.get(file), StandardCharsets.UTF_8)
                        .lines()
                        .skip(1))
                .map(line -> line.substring(0, line.indexOf(',')))
                .toList();
    }

    /** Every table as it is at one moment. */
    private static Map<ArchiveTable, List<Row>> rows(Book book) {
        return book.inTransaction(handle -> {
            Map<ArchiveTable, List<Row>> rows = new LinkedHashMap<>();
            for (ArchiveTable table : ArchiveTable.all(handle)) {
                rows.put(
                        table,
                        handle.createQuery("SELECT * FROM " + table.name() + " ORDER BY " + table.order())
                                .map((result, context) -> RowReader.read(result))
                                .list());
            }
            return rows;
        });
    }

    private static byte[] csv(ArchiveTable table, List<Row> rows) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(table.header());
            for (Row row : rows) {
                csv.writeRecord(table.header().stream()
                        .map(column -> row.values().get(column))
                        .map(value -> value == null ? "" : value.toString())
                        .toList());
            }
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Returns the logs that could not be written, as they are missing or damaged. */
    private static List<String> zip(Path part, Manifest manifest, Map<String, byte[]> files, LogFolder logs)
            throws IOException {
        List<String> lost = new ArrayList<>();
        try (OutputStream out = Files.newOutputStream(part);
                ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            put(zip, Manifest.FILE, json(manifest));
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                put(zip, file.getKey(), file.getValue());
            }
            for (String sha256 : manifest.logs()) {
                if (logs.isWhole(sha256)) {
                    zip.putNextEntry(entry(Manifest.logFile(sha256)));
                    Files.copy(logs.file(sha256), zip);
                    zip.closeEntry();
                } else {
                    lost.add(sha256);
                }
            }
        }
        return lost;
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(entry(name));
        zip.write(bytes);
        zip.closeEntry();
    }

    private static ZipEntry entry(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(FIXED);
        return entry;
    }

    private static byte[] json(Manifest manifest) throws JsonProcessingException {
        // Line ends of its own, so that every system writes the same bytes.
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        return new ObjectMapper().writer(printer).writeValueAsBytes(manifest);
    }
}
