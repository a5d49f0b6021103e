package fettle.book.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * How bytes stand for characters, told from a beginning of the text.
 *
 * @param charset the encoding
 * @param markBytes length of the byte order mark to skip
 */
record TextEncoding(Charset charset, int markBytes) {
    /** Western loggers that do not write UTF-8 write this; it takes every byte. */
    private static final Charset WESTERN = Charset.forName("windows-1252");

    static TextEncoding of(byte[] head) {
        if (begins(head, 0xEF, 0xBB, 0xBF)) {
            return new TextEncoding(StandardCharsets.UTF_8, 3);
        }
        if (begins(head, 0xFF, 0xFE)) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 2);
        }
        if (begins(head, 0xFE, 0xFF)) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 2);
        }
        if (head.length > 3 && head[0] != 0 && head[1] == 0 && head[3] == 0) {
            return new TextEncoding(StandardCharsets.UTF_16LE, 0);
        }
        if (head.length > 3 && head[0] == 0 && head[1] != 0 && head[2] == 0) {
            return new TextEncoding(StandardCharsets.UTF_16BE, 0);
        }
        return new TextEncoding(isUtf8(head) ? StandardCharsets.UTF_8 : WESTERN, 0);
    }

    private static boolean begins(byte[] head, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= head.length || (head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** A character cut off at the end of the beginning is no fault. */
    private static boolean isUtf8(byte[] head) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length + 1), false);
        return !result.isError();
    }
}
