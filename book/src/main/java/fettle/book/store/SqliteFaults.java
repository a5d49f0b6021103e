package fettle.book.store;

import java.nio.file.Path;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Turns what SQLite reports into one sentence with the mend. */
public final class SqliteFaults {
    /** SQLite's extended result codes keep the primary code in the low byte (sqlite.org/rescode.html). */
    private static final int PRIMARY_CODE = 0xff;

    private SqliteFaults() {}

    public static UnusableBookException explain(Throwable thrown, Path file) {
        if (thrown instanceof UnusableBookException known) {
            return known;
        }
        String sentence = sqliteCause(thrown)
                .map(cause -> sentence(cause.getResultCode(), file))
                .orElseGet(() -> "the book " + file + " cannot be used (" + firstLine(thrown) + ").");
        return new UnusableBookException(sentence, thrown);
    }

    private static Optional<SQLiteException> sqliteCause(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                return Optional.of(sqlite);
            }
        }
        return Optional.empty();
    }

    private static String sentence(SQLiteErrorCode result, Path file) {
        if (result == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE) {
            // no room for the file beside the book that every user of it needs (sqlite.org/rescode.html)
            return sentence(SQLiteErrorCode.SQLITE_FULL, file);
        }
        SQLiteErrorCode primary = SQLiteErrorCode.getErrorCode(result.code & PRIMARY_CODE);
        return switch (primary) {
            case SQLITE_FULL ->
                "the disk is full: nothing new was saved in " + file
                        + ", everything before is there. Free some space and try again.";
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH ->
                "the book " + file + " is read-only. Give yourself the right to write it and its folder.";
            case SQLITE_CANTOPEN ->
                "the book " + file + " cannot be opened. Look whether its folder is there and may be written.";
            case SQLITE_CORRUPT, SQLITE_NOTADB ->
                "the book " + file + " is damaged. Keep the file, and restore the latest backup: book restore FILE.";
            case SQLITE_BUSY, SQLITE_LOCKED ->
                "the book " + file + " is being written by another program. Close that, and try again.";
            case SQLITE_IOERR ->
                "the disk failed while using the book " + file + ". Look after the disk, then run: book verify.";
            default -> "the book " + file + " cannot be used (SQLite reports " + result + "). Run: book verify.";
        };
    }

    private static String firstLine(Throwable thrown) {
        String message = thrown.getMessage();
        return message == null
                ? thrown.getClass().getSimpleName()
                : message.lines().findFirst().orElse("");
    }
}
