package fettle.book.intake;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;

/** A log in memory. */
record TextLog(String name, byte[] content) implements LogFile {
    static TextLog of(String... lines) {
        return in(StandardCharsets.UTF_8, lines);
    }

    static TextLog in(Charset charset, String... lines) {
        return new TextLog("flight.csv", (String.join("\n", lines) + "\n").getBytes(charset));
    }

    @Override
    public long bytes() {
        return content.length;
    }

    @Override
    public InputStream open() {
        return new ByteArrayInputStream(content);
    }

    Preview preview() {
        return LogPreview.of(this, ReadingChoices.NONE, null);
    }

    Preview preview(String columns, PositiveCurrent positive) {
        return LogPreview.of(this, new ReadingChoices(ReadingChoices.parse(columns), positive, ZoneOffset.UTC), null);
    }

    Reading read() {
        return read(preview());
    }

    Reading read(Preview preview) {
        return TraceReader.read(this, preview, ZoneOffset.UTC, ReadingProgress.NONE);
    }
}
