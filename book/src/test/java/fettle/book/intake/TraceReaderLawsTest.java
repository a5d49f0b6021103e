package fettle.book.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.trace.Trace;
import fettle.engine.units.InputException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every log: generated tables in every dialect come back, and damaged ones are refused in words. */
final class TraceReaderLawsTest {
    private static final int LOGS = 60;

    /** A generated log and what it says. */
    private record Generated(TextLog log, double[] seconds, double[] volts, double[] amps) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyDialectComesBackAsItWasWritten(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < LOGS; i++) {
            Generated generated = generate(random);
            String what = "seed " + seed + ", log " + i + ":\n" + head(generated.log());
            Trace trace = generated
                    .log()
                    .read(generated.log().preview("", PositiveCurrent.DISCHARGES))
                    .trace();
            assertThat(trace.timeSeconds()).as(what).containsExactly(generated.seconds(), within(1e-6));
            assertThat(trace.packVolts()).as(what).containsExactly(generated.volts(), within(1e-9));
            assertThat(trace.currentAmps()).as(what).containsExactly(generated.amps(), within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void damageIsRefusedInWordsOrReadNeverAnythingElse(long seed) {
        Random random = new Random(seed);
        int refused = 0;
        for (int i = 0; i < LOGS; i++) {
            byte[] bytes = generate(random).log().content().clone();
            int damages = 1 + random.nextInt(40);
            for (int d = 0; d < damages; d++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            TextLog damaged = new TextLog("damaged.csv", Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length)));
            try {
                Trace trace = damaged.read(damaged.preview("", PositiveCurrent.DISCHARGES))
                        .trace();
                assertThat(trace.size()).isPositive();
            } catch (InputException inWords) {
                assertThat(inWords.getMessage()).contains("damaged.csv").doesNotContain("Exception", "java.");
                refused++;
            }
        }
        assertThat(refused).as("seed %d", seed).isPositive();
    }

    private static Generated generate(Random random) {
        int rows = 5 + random.nextInt(80);
        boolean comma = random.nextBoolean();
        char separator = comma ? ";\t|".charAt(random.nextInt(3)) : ",;\t|".charAt(random.nextInt(4));
        boolean milli = random.nextBoolean();
        int clockForm = random.nextInt(3);
        double[] seconds = new double[rows];
        double[] volts = new double[rows];
        double[] amps = new double[rows];
        List<String> lines = new ArrayList<>();
        for (int c = random.nextInt(3); c > 0; c--) {
            lines.add("# written by logger " + random.nextInt(100));
        }
        String[] heading = {
            clockForm == 0 ? "time_s" : clockForm == 1 ? "Time [ms]" : "Clock",
            milli ? "Pack voltage (mV)" : "Pack voltage (V)",
            milli ? "Current (mA)" : "Current (A)",
            "Throttle (%)"
        };
        lines.add(String.join(String.valueOf(separator), heading));
        long startMillis = clockForm == 2 ? random.nextInt(86_400_000) : 0;
        long millis = startMillis;
        for (int i = 0; i < rows; i++) {
            seconds[i] = (millis - startMillis) / 1000.0;
            volts[i] = Math.round(10_000 + 2_600 * random.nextDouble()) / 1000.0;
            amps[i] = Math.round(60_000 * random.nextDouble()) / 1000.0;
            String[] fields = {
                time(millis, clockForm),
                figure(volts[i], milli),
                figure(amps[i], milli),
                String.valueOf(random.nextInt(101))
            };
            String line = String.join(String.valueOf(separator), fields);
            lines.add(comma ? line.replace('.', ',') : line);
            millis += 20 + random.nextInt(1_000);
        }
        Charset charset = List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1)
                .get(random.nextInt(3));
        String end = random.nextBoolean() ? "\n" : "\r\n";
        String mark = charset == StandardCharsets.UTF_16LE ? "\uFEFF" : "";
        byte[] bytes = (mark + String.join(end, lines) + end).getBytes(charset);
        return new Generated(new TextLog("generated.csv", bytes), seconds, volts, amps);
    }

    private static String figure(double value, boolean milli) {
        return milli ? String.valueOf(Math.round(value * 1000)) : String.format(Locale.ROOT, "%.3f", value);
    }

    private static String time(long millis, int form) {
        long day = millis % 86_400_000;
        return switch (form) {
            case 0 -> String.format(Locale.ROOT, "%.3f", millis / 1000.0);
            case 1 -> String.valueOf(millis);
            default ->
                String.format(
                        Locale.ROOT,
                        "%02d:%02d:%02d.%03d",
                        day / 3_600_000,
                        day / 60_000 % 60,
                        day / 1000 % 60,
                        day % 1000);
        };
    }

    private static String head(TextLog log) {
        return new String(log.content(), 0, Math.min(300, log.content().length), StandardCharsets.ISO_8859_1);
    }
}
