package fettle.book.archive;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What an archive says of itself, as {@code manifest.json}.
 *
 * @param format always {@link #FORMAT}
 * @param formatVersion version of the archive's layout
 * @param schemaVersion version of the book's tables
 * @param tables one for each CSV file, in order
 * @param logs SHA-256 of each log it should carry, packed, as {@link #logFile}
 */
record Manifest(
        @JsonProperty("format") String format,
        @JsonProperty("format_version") int formatVersion,
        @JsonProperty("schema_version") int schemaVersion,
        @JsonProperty("tables") List<Entry> tables,
        @JsonProperty("logs") List<String> logs) {
    static final String FILE = "manifest.json";
    static final String FORMAT = "fettle bench book";
    static final int FORMAT_VERSION = 2;
    static final String LOG_TABLE = "trace_file.csv";
    private static final String LOGS = "logs/";
    private static final Pattern LOG_FILE = Pattern.compile("logs/[0-9a-f]{64}\\.gz");

    /** Where a log stands in the archive. */
    static String logFile(String sha256) {
        return LOGS + sha256 + ".gz";
    }

    static boolean isLogFile(String name) {
        return LOG_FILE.matcher(name).matches();
    }

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
