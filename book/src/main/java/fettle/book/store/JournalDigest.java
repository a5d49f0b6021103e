package fettle.book.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A digest over each change and the digest before it (SHA-256, NIST FIPS 180-4), so that a changed, missing or
 * reordered line of the journal shows. It finds damage; it does not keep anyone from rewriting the whole.
 */
public final class JournalDigest {
    private JournalDigest() {}

    /** The same row with its digest. */
    static JournalRow seal(JournalRow row, String previousDigest) {
        return new JournalRow(
                row.id(),
                row.at(),
                row.actor(),
                row.sentence(),
                row.subject(),
                row.kind(),
                row.itemId(),
                row.before(),
                row.after(),
                row.undoes(),
                of(row, previousDigest));
    }

    public static String of(JournalRow row, String previousDigest) {
        String text = String.join(
                "\u0000",
                previousDigest,
                String.valueOf(row.id()),
                row.at().toString(),
                row.actor(),
                row.sentence(),
                row.subject(),
                row.kind().table(),
                String.valueOf(row.itemId()),
                String.valueOf(row.before()),
                row.after().toString(),
                String.valueOf(row.undoes()));
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
