package fettle.book.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Connections to a book's file, and its schema. */
public final class SqliteFile {
    /** The schema this version writes; the newest migration in {@code fettle/book/schema}. */
    public static final int SCHEMA_VERSION = 7;

    private static final int BUSY_MILLISECONDS = 5_000;

    private SqliteFile() {}

    /** For reading and writing: an acknowledged transaction is on the disk (WAL with full sync). */
    static DataSource writable(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return source(file, config);
    }

    private static DataSource source(Path file, SQLiteConfig config) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** The same of a file that is not in use. */
    public static void migrate(Path file, LogFolder logs) throws SQLException {
        migrate(source(file, new SQLiteConfig()), file, logs);
    }

    /** Brings the schema up to this version; refuses a newer one and files that are not a book. */
    static void migrate(DataSource source, Path file, LogFolder logs) throws SQLException {
        int present;
        try (Connection connection = source.getConnection()) {
            present = schemaVersion(connection, file);
        }
        if (present == SCHEMA_VERSION) {
            return;
        }
        if (present > 0) {
            try (Handle handle = Jdbi.create(source).open()) {
                LogPieces.unpack(handle, logs);
            }
        }
        try {
            Flyway.configure()
                    .loggers("slf4j")
                    .dataSource(source)
                    .locations("classpath:fettle/book/schema")
                    .load()
                    .migrate();
        } catch (FlywayException failed) {
            throw SqliteFaults.explain(failed, file);
        }
    }

    /**
     * The schema version of a book; 0 where the file has no table at all.
     *
     * @throws UnusableBookException if it is of a newer version than this one, or no book
     */
    public static int schemaVersion(Connection connection, Path file) throws SQLException {
        int tables = number(connection, "SELECT count(*) FROM sqlite_master WHERE type = 'table'");
        if (tables == 0) {
            return 0;
        }
        if (number(connection, "SELECT count(*) FROM sqlite_master WHERE name = 'flyway_schema_history'") == 0) {
            throw new UnusableBookException(
                    file + " is a database of something else, not a Fettle book. Name another.");
        }
        int version = number(
                connection,
                "SELECT ifnull(max(CAST(version AS INTEGER)), 0) FROM flyway_schema_history WHERE success = 1");
        if (version > SCHEMA_VERSION) {
            throw new UnusableBookException("the book " + file + " was written by a newer Fettle (schema " + version
                    + "; this one knows up to " + SCHEMA_VERSION + "). Use that version, or newer.");
        }
        return version;
    }

    private static int number(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(sql)) {
            return result.getInt(1);
        }
    }
}
