package fettle.reliability;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;

/** Makes hostile input of good input: cut, doubled, spliced, and with scraps in it that break careless readers. Seeded. */
final class Mischief {
    private static final List<String> SCRAPS = List.of(
            "NaN",
            "nan V",
            "Infinity",
            "-Infinity",
            "1e999",
            "-1e308",
            "1e-400",
            "4.9e-324",
            "0x1p3",
            "9".repeat(400),
            "-0",
            "+-3",
            "3..84",
            "3,84,",
            "٣٫٨٤",
            "３.８４",
            "−3.84",
            "½",
            "²",
            "1_000",
            "1'000",
            "%",
            "%s%n",
            "\u0000",
            "\u0007",
            "\u001b[2J",
            "\u202eABC",
            "\u2066",
            "مرحبا بالعالم",
            "שלום",
            "\ufeff",
            "\ud800",
            "\udfff",
            "🛩🛩",
            "a\u0301\u0301\u0301",
            "'; DROP TABLE pack; --",
            "<script>alert(1)</script>",
            "\"><img src=x>",
            "../../../../etc/passwd",
            "..\\..\\",
            "file:///etc/passwd",
            "${jndi:x}",
            "#{7*7}",
            "{{7*7}}",
            "\n",
            "\r",
            "\r\n",
            "\t",
            "\f",
            "\u0085",
            "\u2028",
            ",",
            ";",
            "|",
            "\"",
            "'",
            "\\",
            "/",
            ":",
            "=",
            "[".repeat(1500),
            "{\"a\":".repeat(1500),
            "(".repeat(300),
            "x".repeat(5000),
            " ".repeat(3000),
            "null",
            "true",
            "undefined",
            "2026-02-30",
            "0000-00-00",
            "99:99",
            "24:60:61",
            "9999999999-01-01",
            "-1",
            "0",
            "2147483648",
            "9223372036854775808",
            "18446744073709551616",
            "1e18",
            "1e300 V",
            "99S99P",
            "0S",
            "1000000 mAh");

    final Random random;

    Mischief(long seed) {
        this.random = new Random(seed);
    }

    String pick(List<String> good) {
        return good.get(random.nextInt(good.size()));
    }

    String scrap() {
        return pick(SCRAPS);
    }

    /** One of the good texts, damaged a few times; now and then left whole, so that the ways behind a reader are gone too. */
    String text(List<String> good) {
        StringBuilder text = new StringBuilder(pick(good));
        for (int damage = random.nextInt(6); damage > 0; damage--) {
            damage(text, good);
        }
        return text.toString();
    }

    private void damage(StringBuilder text, List<String> good) {
        int at = random.nextInt(text.length() + 1);
        int to = at + random.nextInt(Math.min(20, text.length() - at) + 1);
        switch (random.nextInt(7)) {
            case 0 -> text.delete(at, to);
            case 1 -> text.insert(at, scrap());
            case 2 -> text.replace(at, to, scrap());
            case 3 -> text.insert(at, text.substring(at, to).repeat(1 + random.nextInt(40)));
            case 4 -> text.insert(at, (char) random.nextInt(0x10000));
            case 5 -> text.replace(at, text.length(), tail(pick(good)));
            default -> {
                if (at < text.length()) {
                    text.setCharAt(at, (char) (text.charAt(at) ^ 1 << random.nextInt(7)));
                }
            }
        }
    }

    private String tail(String other) {
        return other.substring(random.nextInt(other.length() + 1));
    }

    /** The same as bytes of some encoding, with damaged bytes, now and then packed. */
    byte[] bytes(List<String> good) {
        List<Charset> charsets = List.of(
                StandardCharsets.UTF_8, StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1);
        byte[] bytes = text(good).getBytes(charsets.get(random.nextInt(charsets.size())));
        for (int damage = random.nextInt(8) - 4; damage > 0 && bytes.length > 0; damage--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        byte[] packed = random.nextInt(20) == 0 ? gzip(bytes) : bytes;
        if (packed != bytes && random.nextBoolean()) {
            packed[random.nextInt(packed.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return packed;
    }

    static byte[] gzip(byte[] bytes) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(bytes);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return packed.toByteArray();
    }
}
