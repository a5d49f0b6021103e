package fettle.book.intake;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Kinds of file that are no table, known by their first bytes (their published signatures), whatever their name says. */
final class FileKind {
    /** @param offset where its signature stands */
    private record Signature(int offset, byte[] bytes, String what) {
        boolean opens(byte[] head) {
            return head.length >= offset + bytes.length
                    && Arrays.equals(head, offset, offset + bytes.length, bytes, 0, bytes.length);
        }
    }

    private static final List<Signature> SIGNATURES = List.of(
            signature(0, "\u00FF\u00D8\u00FF", "a JPEG picture"),
            signature(0, "\u0089PNG", "a PNG picture"),
            signature(0, "GIF8", "a GIF picture"),
            signature(0, "RIFF", "a sound, film or WebP picture"),
            signature(4, "ftyp", "a film or HEIC picture"),
            signature(0, "%PDF", "a PDF document"),
            signature(0, "PK\u0003\u0004", "a zip archive or a spreadsheet workbook"),
            signature(0, "\u00D0\u00CF\u0011\u00E0", "an old spreadsheet or text document"),
            signature(0, "SQLite format 3", "a database"),
            signature(0, "PAR1", "a Parquet file"),
            signature(0, "\u007FELF", "a program"),
            signature(0, "7z\u00BC\u00AF", "a 7z archive"),
            signature(0, "BZh", "a bzip2 archive"),
            signature(0, "\u00FD7zXZ", "an xz archive"));

    private FileKind() {}

    private static Signature signature(int offset, String text, String what) {
        return new Signature(offset, text.getBytes(StandardCharsets.ISO_8859_1), what);
    }

    /** What the file is, if it is no text: {@code a JPEG picture}. */
    static Optional<String> ofForeign(byte[] head) {
        return SIGNATURES.stream()
                .filter(signature -> signature.opens(head))
                .map(Signature::what)
                .findFirst();
    }

    static boolean isGzip(byte[] head) {
        return head.length > 2 && head[0] == 0x1F && head[1] == (byte) 0x8B;
    }
}
