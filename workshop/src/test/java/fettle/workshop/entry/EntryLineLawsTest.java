package fettle.workshop.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.pack.Check;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every line, on generated lines. A failure prints the line; the seeds are fixed. */
class EntryLineLawsTest {
    private static final int LINES_A_SEED = 6_000;

    private static final List<String> GOOD = List.of(
            "P07 3.84 3.83 3.85 3.84 21C rest 2h ir 2.1 2.2 2.0 2.4 by charger note soft corner",
            "p07: 3,84; 3840mV; 3.85 V; 3.84, 70 °F rest 1h 30min yesterday 18:30 swollen",
            "P07 15.4V pack at 2026-11-02 18:30 \"kept in the shed\" smells",
            "charged P07 1840 mAh to 4.2 per cell 31C 2h ago",
            "P02 charged 1.84Ah to pack 8,40V today 9:05 note by the window",
            "P07 ran Brook Heron 7.5 min left 30% left 15.2V at 41C",
            "P07 flew \"Kestrel 2\" for 7min30 3.78V left on 2026-11-20");

    private static final String[] SCRAPS = {
        "P07",
        "P02",
        "P01",
        "P14",
        "P99",
        "charged",
        "ran",
        "check",
        "3.84",
        "3,84",
        "-3.84",
        "3840",
        "3840mV",
        "15.4V",
        "V",
        "mV",
        "21C",
        "70F",
        "°C",
        "°",
        "rest",
        "2h",
        "1h30",
        "90",
        "min",
        "ir",
        "2.1",
        "mΩ",
        "by",
        "charger",
        "swollen",
        "no",
        "smells",
        "note",
        "\"",
        "„",
        "“",
        "“note”",
        "at",
        "on",
        "today",
        "yesterday",
        "ago",
        "18:30",
        "7:5",
        "2026-11-02",
        "2026-13-45",
        "0000-00-00",
        "99:99",
        "pack",
        "left",
        "30%",
        "to",
        "/cell",
        "per",
        "cell",
        "a",
        "/",
        "each",
        "in",
        "for",
        "Kestrel",
        "Kestrel 2",
        "Brook",
        "Heron",
        "1840mAh",
        "Ah",
        "1C",
        "999999999999",
        "0.000000000001",
        "1e9",
        "NaN",
        "Infinity",
        "∞",
        "½",
        "٣",
        "\u00a0",
        "\u0000",
        "\ud83d\udd0b",
        "\ud83d",
        "µ",
        "İ",
        "ß",
        "'; --",
        "<b>",
        "%s",
        "{0}",
        ",",
        ".",
        ";",
        ":",
        "..",
        "-",
        "+",
        "−",
        "3..84",
        "3.84/3.83",
        "3.8O",
        "0",
        "00",
        "00:00",
        "999999d",
        "1d1h1min1s"
    };

    @ParameterizedTest
    @ValueSource(longs = {1, 20_261_125})
    void neverThrowsAndPutsEveryProblemInsideALineOfScraps(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int line = 0; line < LINES_A_SEED; line++) {
            StringBuilder text = new StringBuilder(random.nextInt(4) == 0 ? "" : "P07 ");
            for (int scrap = random.nextInt(12); scrap >= 0; scrap--) {
                text.append(SCRAPS[random.nextInt(SCRAPS.length)]).append(random.nextInt(5) == 0 ? "" : " ");
            }
            assertLawful(text.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 7_919})
    void neverThrowsAndPutsEveryProblemInsideAMutatedLine(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int line = 0; line < LINES_A_SEED; line++) {
            String text = GOOD.get(random.nextInt(GOOD.size()));
            for (int change = random.nextInt(6); change >= 0; change--) {
                text = mutated(text, random);
            }
            assertLawful(text);
        }
    }

    @Test
    void savesEveryLineTheMutationsStartFrom() {
        GOOD.forEach(
                line -> assertThat(LineFixtures.read(line).problems()).as(line).isEmpty());
    }

    @Test
    void readsBackEveryCheckHoweverItIsWritten() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < LINES_A_SEED; round++) {
            Readings readings = Readings.random(random);
            String line = readings.written(random);
            Entry entry = LineFixtures.read(line).entry();
            assertThat(entry).as(line).isInstanceOf(Entry.OfCheck.class);
            readings.assertSame(line, ((Entry.OfCheck) Objects.requireNonNull(entry)).check());
        }
    }

    private static String mutated(String text, SplittableRandom random) {
        int at = random.nextInt(text.length() + 1);
        String before = text.substring(0, at);
        String after = text.substring(at);
        return switch (random.nextInt(5)) {
            case 0 -> before + after.substring(Math.min(1, after.length()));
            case 1 -> before + (char) (' ' + random.nextInt('~' - ' ')) + after;
            case 2 -> before + SCRAPS[random.nextInt(SCRAPS.length)] + after;
            case 3 -> after + " " + before;
            default -> text + " " + after;
        };
    }

    private static void assertLawful(String line) {
        LineReading reading = LineFixtures.read(line);
        assertThat(reading.problems().isEmpty()).as(line).isEqualTo(reading.entry() != null);
        int previous = 0;
        for (Problem problem : reading.problems()) {
            assertThat(problem.column()).as(line).isBetween(Math.max(1, previous), Math.max(1, line.length()));
            assertThat(line.substring(problem.column() - 1)).as(line).startsWith(problem.part());
            assertThat(problem.sentence()).as(line).isNotBlank().doesNotContain("Exception", "null");
            previous = problem.column();
        }
        if (reading.entry() instanceof Entry.OfCheck saved) {
            assertOneReadingACell(line, Objects.requireNonNull(reading.packTag()), saved.check());
        }
    }

    private static void assertOneReadingACell(String line, String tag, Check check) {
        int cells = new LineFixtures().pack(tag).orElseThrow().pack().cellsInSeries();
        assertThat(check.cellRestVolts().size()).as(line).isIn(0, cells);
        assertThat(check.cellResistanceOhms().size()).as(line).isIn(0, cells);
        assertThat(check.takenAt()).as(line).isBeforeOrEqualTo(LineFixtures.NOW);
    }

    /** What a person means to enter for P07, in the trade's units, and one of many ways to write it. */
    private record Readings(List<Integer> millivolts, int celsiusTenths, int restMinutes, List<Integer> microOhms) {
        static Readings random(SplittableRandom random) {
            return new Readings(
                    random.ints(4, 2_500, 4_300).boxed().toList(),
                    random.nextInt(-100, 600),
                    random.nextInt(6_000),
                    random.ints(4, 500, 99_999).boxed().toList());
        }

        String written(SplittableRandom random) {
            List<String> parts = new ArrayList<>(List.of(
                    volts(random),
                    temperature(random),
                    rest(random),
                    "ir "
                            + joined(microOhms.stream()
                                    .map(ohms ->
                                            random.nextBoolean() ? decimal(ohms / 1e3, 4, random) : ohms / 1e3 + "mOhm")
                                    .toList())
                            + " by charger"));
            Collections.shuffle(parts, new Random(random.nextLong()));
            String line = (random.nextBoolean() ? "P07 " : "p07: ") + String.join(" ", parts);
            return random.nextBoolean() ? line : line + " note 3.84 21C";
        }

        private String volts(SplittableRandom random) {
            return joined(millivolts.stream()
                    .map(cell -> switch (random.nextInt(4)) {
                        case 0 -> cell + (random.nextBoolean() ? "" : "mV");
                        case 1 -> decimal(cell / 1e3, 3, random) + " V";
                        case 2 -> decimal(cell / 1e3, 3, random) + "v,";
                        default -> decimal(cell / 1e3, 3, random);
                    })
                    .toList());
        }

        private String temperature(SplittableRandom random) {
            double celsius = celsiusTenths / 10.0;
            return switch (random.nextInt(3)) {
                case 0 -> decimal(celsius, 1, random) + "C";
                case 1 -> "at " + decimal(celsius, 1, random) + " °C";
                default -> decimal(celsius * 1.8 + 32, 2, random) + "F";
            };
        }

        private String rest(SplittableRandom random) {
            int hours = restMinutes / 60;
            int minutes = restMinutes % 60;
            return switch (random.nextInt(4)) {
                case 0 -> "rest " + restMinutes + "min";
                case 1 -> "rested " + restMinutes * 60 + " s";
                case 2 -> "rest " + hours + "h" + minutes;
                default -> "rest " + hours + " h " + minutes + " min,";
            };
        }

        void assertSame(String line, Check check) {
            for (int cell = 0; cell < millivolts.size(); cell++) {
                assertThat(check.cellRestVolts().get(cell))
                        .as(line)
                        .isCloseTo(millivolts.get(cell) / 1e3, within(1e-12));
                assertThat(check.cellResistanceOhms().get(cell))
                        .as(line)
                        .isCloseTo(microOhms.get(cell) / 1e6, within(1e-12));
            }
            assertThat(check.temperatureKelvins()).as(line).isCloseTo(celsiusTenths / 10.0 + 273.15, within(1e-9));
            assertThat(check.restSeconds()).as(line).isEqualTo(restMinutes * 60.0);
            assertThat(check.resistanceMethod()).as(line).isEqualTo("charger");
            assertThat(check.note()).as(line).isEqualTo(line.endsWith("note 3.84 21C") ? "3.84 21C" : "");
        }

        private static String decimal(double value, int decimals, SplittableRandom random) {
            String point = String.format(Locale.ROOT, "%." + decimals + "f", value);
            return random.nextBoolean() ? point : point.replace('.', ',');
        }

        private static String joined(List<String> parts) {
            return String.join(" ", parts);
        }
    }
}
