package fettle.book.intake;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The same rows as the CSV library's, field by field and line by line, whatever the text. */
final class LogRowsTest {
    private static final String[] PIECES = {
        "12.5", "-3", "", " ", "7,5", "abc", "\n", "\r\n", "\n", "\r", "\n\n", ";", ";", ";", ";", "# a", "x y"
    };

    /** Hands on few characters at a time, so that rows lie across its ends. */
    private static final class Drops extends Reader {
        private final StringReader text;

        Drops(String text) {
            this.text = new StringReader(text);
        }

        @Override
        public int read(char[] into, int from, int length) throws IOException {
            return text.read(into, from, Math.min(7, length));
        }

        @Override
        public void close() {
            text.close();
        }
    }

    private static List<String> own(String text) throws IOException {
        return own(new Drops(text));
    }

    private static List<String> own(Reader text) throws IOException {
        Dialect dialect = new Dialect("UTF-8", ';', '.', 0, 1, Dialect.Quotes.AT_ONCE);
        List<String> rows = new ArrayList<>();
        try (LogRows parted = new LogRows(text, dialect)) {
            for (LogRow row = parted.next(); row != null; row = parted.next()) {
                List<String> fields = new ArrayList<>();
                for (int i = 0; i < row.fields(); i++) {
                    fields.add(row.field(i));
                }
                rows.add(row.line() + " " + fields);
            }
        }
        return rows;
    }

    private static List<String> library(String text) throws IOException {
        List<String> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = Dialect.rows(new StringReader(text), ';')) {
            reader.forEach(row -> rows.add(row.getStartingLineNumber() + " " + row.getFields()));
        }
        return rows;
    }

    private static String random(Random random, int pieces) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pieces; i++) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return text.toString();
    }

    @Test
    void partsTextWithoutQuotesAsTheLibraryDoes() throws IOException {
        for (long seed = 0; seed < 400; seed++) {
            String text = random(new Random(seed), 60);
            assertThat(own(text)).as("seed %d", seed).isEqualTo(library(text));
        }
    }

    @Test
    void leavesTheRestToTheLibraryFromTheFirstQuoteOn() throws IOException {
        for (long seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            String text = random(random, 30) + "\n1;\"two; and\nmore\";3\n" + random(random, 30);
            assertThat(own(text)).as("seed %d", seed).isEqualTo(library(text));
        }
    }

    @Test
    void partsLinesLongerThanItsFirstBuffer() throws IOException {
        String wide = "1".repeat(150_000) + ";2\n3;4\n";
        assertThat(own(new StringReader(wide))).isEqualTo(library(wide));
    }
}
