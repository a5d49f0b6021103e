package fettle.reliability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import fettle.book.archive.Import;
import fettle.book.intake.ReadingChoices;
import fettle.book.store.Book;
import fettle.book.store.UnusableBookException;
import fettle.engine.units.InputException;
import fettle.workshop.sweep.SweepChoices;
import fettle.workshop.sweep.SweepReading;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is typed or given, every reader reads it or refuses it in words. {@code -Dfettle.inputs=N} asks for more, and
 * then also for at most a second of work each and memory that does not grow.
 */
final class HostileInputTest {
    private static final int SHORT_FORM = 2_000;
    private static final int INPUTS = Integer.getInteger("fettle.inputs", SHORT_FORM);
    private static final long SEED = Long.getLong("fettle.seed", 8_128);
    private static final long LONGEST_NANOS = 1_000_000_000;
    private static final long MOST_GROWTH_BYTES = 32L * 1024 * 1024;
    private static final int MIB = 1024 * 1024;

    @TempDir
    private Path folder;

    @Test
    void everyReaderReadsItOrRefusesItInWords() {
        Parsers.all(folder).forEach((name, reader) -> {
            Mischief mischief = new Mischief(SEED);
            int inputs = Math.max(10, INPUTS / 1000 * reader.share());
            for (int input = 0; input < inputs / 10; input++) {
                isRead(name, reader, mischief);
            }
            long before = INPUTS > SHORT_FORM ? usedBytes() : 0;
            int read = 0;
            long longest = 0;
            for (int input = inputs / 10; input < inputs; input++) {
                long start = cpuNanos();
                read += isRead(name, reader, mischief) ? 1 : 0;
                longest = Math.max(longest, cpuNanos() - start);
            }
            if (INPUTS > SHORT_FORM) {
                long growth = usedBytes() - before;
                System.out.printf(
                        "%-18s %7d inputs, %7d of them read, longest %4d ms, memory %+.1f MiB%n",
                        name, inputs, read, longest / MIB, (double) growth / MIB);
                assertThat(longest).as(name).isLessThan(LONGEST_NANOS);
                assertThat(growth).as(name).isLessThan(MOST_GROWTH_BYTES);
            }
        });
    }

    private static boolean isRead(String name, Parsers.Reader reader, Mischief mischief) {
        try {
            reader.take().accept(mischief);
            return true;
        } catch (InputException | UnusableBookException inWords) {
            assertThat(inWords.getMessage())
                    .as(name)
                    .isNotBlank()
                    .doesNotContain("Exception", "java.", "\tat ")
                    .doesNotContainPattern("[\\p{Cntrl}&&[^\\n\\t]]|[\\u202a-\\u202e\\u2066-\\u2069]");
            return false;
        } catch (RuntimeException | Error crash) {
            return fail(name + ", seed " + SEED, crash);
        }
    }

    private static long cpuNanos() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return threads.getCurrentThreadCpuTime();
    }

    private static long usedBytes() {
        for (int time = 0; time < 3; time++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    void aTableOfAHundredThousandColumnsIsReadOrRefused() {
        String headings =
                IntStream.range(0, 100_000).mapToObj(at -> "Cell " + at % 99).collect(Collectors.joining(","));
        String row = "3.8,".repeat(99_999) + "3.8\n";
        byte[] table = (headings + "\n" + row.repeat(3)).getBytes(StandardCharsets.UTF_8);
        refusesInWords(() -> Parsers.readLog(table));
        refusesInWords(() -> SweepReading.of("wide.csv", table, SweepChoices.NONE));
        byte[] timed = ("time_s," + "volts,".repeat(99_998) + "amps\n" + ("1," + row).repeat(3))
                .getBytes(StandardCharsets.UTF_8);
        refusesInWords(() -> Parsers.readLog(timed));
        refusesInWords(() -> ReadingChoices.parse("volts=1,".repeat(100_000) + "x"));
    }

    /** Sixty-four megabytes of nothing, of a clock that stands still, and of rows, in as many kilobytes. */
    @Test
    void aLogThatUnpacksWithoutEndIsRefused() throws IOException {
        refusesInWords(() -> Parsers.readLog(bomb("time_s,volts,amps\n0,12,1\n", new byte[MIB], 64)));
        byte[] still = "0,12,1\n".repeat(MIB / 7).getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> Parsers.readLog(bomb("time_s,volts,amps\n", still, 64)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("the clock stands still");
        String rows = IntStream.range(0, 10_000)
                .mapToObj(second -> second + ",12,1," + "x".repeat(2_000) + "\n")
                .collect(Collectors.joining());
        assertThatThrownBy(() -> Parsers.readLog(bomb("time_s,volts,amps,said\n" + rows, new byte[0], 0)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("unpacks to more than");
    }

    private static byte[] bomb(String begin, byte[] piece, int pieces) {
        java.io.ByteArrayOutputStream packed = new java.io.ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(begin.getBytes(StandardCharsets.UTF_8));
            for (int at = 0; at < pieces; at++) {
                gzip.write(piece);
            }
        } catch (IOException never) {
            throw new java.io.UncheckedIOException(never);
        }
        return packed.toByteArray();
    }

    @Test
    void anArchiveThatUnpacksWithoutEndOrClimbsOutIsRefusedAndWritesNothing() throws IOException {
        Path bomb = folder.resolve("bomb.zip");
        byte[] blanks = new byte[MIB];
        Arrays.fill(blanks, (byte) ' ');
        try (OutputStream out = Files.newOutputStream(bomb);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("pack.csv"));
            for (int piece = 0; piece < 400; piece++) {
                zip.write(blanks);
            }
        }
        refusesToImport(bomb, "unpacks to more than");
        for (String climbing : new String[] {"../../climbed.csv", "/tmp/climbed.csv", "logs/../../climbed.gz"}) {
            Path archive = Files.write(
                    folder.resolve("climbing.zip"),
                    Parsers.zip(Map.of(climbing, "x".getBytes(StandardCharsets.UTF_8))));
            refusesToImport(archive, "which Fettle does not write there");
        }
        try (var found = Files.walk(folder)) {
            assertThat(found.map(Path::toString)).noneMatch(name -> name.contains("climbed"));
        }
    }

    private void refusesToImport(Path archive, String why) {
        try (Book book = Book.open(folder.resolve("empty"))) {
            assertThatThrownBy(() -> Import.read(book, archive))
                    .isInstanceOf(UnusableBookException.class)
                    .hasMessageContaining(why);
            assertThat(book.journal().recent(0, 1)).isEmpty();
        }
    }

    private static void refusesInWords(Runnable reading) {
        assertThatThrownBy(reading::run)
                .isInstanceOf(InputException.class)
                .satisfies(refusal -> assertThat(String.valueOf(refusal.getMessage()))
                        .hasSizeLessThan(2_000)
                        .doesNotContain("Exception"));
    }
}
