package fettle.book.archive;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * What an archive says of itself, as {@code manifest.json}.
 *
 * @param format always {@link #FORMAT}
 * @param formatVersion version of the archive's layout
 * @param schemaVersion version of the book's tables
 * @param tables one for each CSV file, in order
 */
record Manifest(
        @JsonProperty("format") String format,
        @JsonProperty("format_version") int formatVersion,
        @JsonProperty("schema_version") int schemaVersion,
        @JsonProperty("tables") List<Entry> tables) {
    static final String FILE = "manifest.json";
    static final String FORMAT = "fettle bench book";
    static final int FORMAT_VERSION = 1;

    /**
     * One CSV file.
     *
     * @param sha256 of the file, in hexadecimal
     */
    record Entry(
            @JsonProperty("file") String file,
            @JsonProperty("columns") List<String> columns,
            @JsonProperty("rows") int rows,
            @JsonProperty("sha256") String sha256) {}
}
