package fettle.reliability;

import fettle.book.archive.Import;
import fettle.book.intake.LogFile;
import fettle.book.intake.LogPreview;
import fettle.book.intake.MappingText;
import fettle.book.intake.PositiveCurrent;
import fettle.book.intake.Preview;
import fettle.book.intake.ReadingChoices;
import fettle.book.intake.ReadingProgress;
import fettle.book.intake.RegisterDump;
import fettle.book.intake.TraceReader;
import fettle.book.store.Book;
import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.rule.RuleSet;
import fettle.workshop.PackForm;
import fettle.workshop.SurfaceText;
import fettle.workshop.Workshop;
import fettle.workshop.entry.EntryLine;
import fettle.workshop.entry.KnownKit;
import fettle.workshop.entry.KnownPack;
import fettle.workshop.scenario.Scenario;
import fettle.workshop.sweep.SweepChoices;
import fettle.workshop.sweep.SweepReading;
import fettle.workshop.sweep.TypedSweep;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;

/** Every reader of typed or given input, each with good input to make hostile input of. */
final class Parsers {
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");

    private static final List<String> LINES = List.of(
            "P07 3.84 3.83 3.85 3.84 21C rest 2h ir 2.1 2.2 2.0 2.4 by charger note soft corner",
            "p07: 3,84; 3840mV; 3.85 V; 3.84, 70 °F rest 1h 30min yesterday 18:30 swollen",
            "charged P07 1840 mAh to 4.2 per cell 31C 2h ago",
            "P07 ran Heron 7.5 min left 30% left 15.2V at 41C",
            "P07 15.4V pack at 2026-11-02 18:30 \"kept in the shed\" smells");
    private static final List<String> SURFACES = List.of(
            "left aileron; wing; 1100 1500 1900; 50 mm; high 20/16, low 12/10; arm 10; horn 15; pushrod aft 80 above 0 arm"
                    + " 90 horn 90; idle 8 mA; largest 0.4 A; reversed",
            "rudder; tail; 1000 1500 2000; 2 in; 25/25\nelevator; tail; 1000 1520 2000; 40; high 12,5/10,5");
    private static final List<String> SWEEPS = List.of(
            "1000 580mA\n1100 420mA\n1200 300mA\n1300 210mA\n1400 190mA\n1500 180mA",
            "1,0 ms; 0,58 A; -24°\n1,1 ms; 0,48 A; -20°\n1,2 ms; 0,38 A; -16°\n1,3 ms; 0,3 A; -12°");
    private static final List<String> TABLES = List.of(
            "pulse_us,current_ma\n1000,580\n1100,420\n1200,300\n1300,210\n1400,190\n",
            "Impuls [ms];Strom [A];Winkel [°]\n1,0;0,58;-24\n1,1;0,48;-20\n1,2;0,38;-16\n");
    private static final List<String> LOGS = List.of(
            "time_s,Pack voltage (V),Current (A)\n0,16.4,0.1\n1,16.1,12.4\n2,15.9,14\n3,15.8,14.5\n4,16.3,0.2\n",
            "# logger 7\nZeit;Zelle 1 [mV];Zelle 2 [mV];Strom [mA];Temp\n00:00:01,500;4100;4090;120;21\n"
                    + "00:00:02,000;4050;4040;9000;21\n00:00:02,500;4000;3990;12000;22\n",
            "Date\tTime\tVbat\tAmps\n2026-05-16\t09:59:58\t12.6\t0\n2026-05-16\t09:59:59\t12.4\t8\n"
                    + "2026-05-16\t10:00:00\t12.3\t9\n");
    private static final List<String> REGISTERS = List.of(
            "register,word\nVoltage,0x3138\nCurrent,0xFC18\nTemperature,0x0BA6\nCycleCount,12\n",
            "0x09 12600\n0x0a 64536\n0x1A 0x0031\n");
    private static final List<String> COLUMNS = List.of(
            "time=1:s,volts=Pack voltage (V):V,amps=3:mA", "cell1=2,cell2=3,unused=1", "date=1,time=2,temperature=4:C");
    private static final List<String> MAPPINGS = List.of(
            "{\"columns\":[{\"index\":0,\"name\":\"t\",\"role\":\"TIME\",\"cell\":0,\"unit\":\"SECOND\",\"unitStated\":true}],"
                    + "\"positive\":\"DISCHARGES\"}");
    private static final List<String> SCENARIOS = List.of(
            "{\"title\":\"x\",\"cells\":{\"A\":{\"curve\":\"LiPo\",\"capacity_ah\":2.2,\"r0_ohms\":0.008,\"pairs\":[{\"ohms\":0.006,"
                    + "\"farads\":2500}]}},\"packs\":[{\"name\":\"full\",\"lead_ohms\":0.01,\"cells\":[{\"like\":\"A\",\"charge\":0.8,"
                    + "\"count\":3}]}],\"balancer\":{\"bleed_amps\":0.2,\"duty\":0.9,\"within_volts\":0.004},\"step_seconds\":1,"
                    + "\"steps\":[{\"repeat\":6,\"steps\":[{\"rest\":true,\"until\":{\"after_seconds\":10}},{\"discharge_amps\":20,"
                    + "\"until\":{\"after_seconds\":30,\"cell_volts_at_most\":3.3}}]}]}",
            "{\"curves\":{\"mine\":[[0,3.0],[0.5,3.79],[1,4.2]]},\"packs\":[{\"cells\":[{\"curve\":\"mine\",\"capacity_ah\":5,"
                    + "\"r0_ohms\":0.004,\"charge\":0.2,\"temperature_celsius\":12}]}],\"steps\":[{\"charge\":{\"volts\":4.2,"
                    + "\"amps\":5},\"until\":{\"amps_at_most\":0.25}}]}");

    private Parsers() {}

    /**
     * Each parser by name, with how many of a thousand inputs are its own.
     *
     * @param folder for files of archives
     */
    static Map<String, Reader> all(Path folder) {
        Map<String, Reader> all = new LinkedHashMap<>();
        Kit kit = new Kit();
        Clock clock = Clock.fixed(NOW, ZoneId.of("Europe/Vienna"));
        all.put("entry line", new Reader(500, LINES, line -> EntryLine.read(line, kit, clock)));
        all.put("surface lines", new Reader(120, SURFACES, SurfaceText::parse));
        all.put("typed sweep", new Reader(90, SWEEPS, sweep -> TypedSweep.read(sweep, SweepChoices.NONE)));
        all.put("scenario", new Reader(110, SCENARIOS, text -> Scenario.parse("made-up.json", text)));
        all.put("columns as typed", new Reader(50, COLUMNS, ReadingChoices::parse));
        all.put("kept mapping", new Reader(30, MAPPINGS, MappingText::read));
        all.put(
                "sweep file",
                Reader.ofBytes(25, TABLES, bytes -> SweepReading.of("made-up.csv", bytes, SweepChoices.NONE)));
        all.put("registers", Reader.ofBytes(30, REGISTERS, bytes -> RegisterDump.read(new Given(bytes))));
        all.put("log", Reader.ofBytes(40, LOGS, Parsers::readLog));
        all.put("archive", archive(folder));
        return all;
    }

    /**
     * A reader under test.
     *
     * @param share of a thousand inputs
     * @param take makes one hostile input and has it read
     */
    record Reader(int share, Consumer<Mischief> take) {
        Reader(int share, List<String> good, Consumer<String> read) {
            this(share, mischief -> read.accept(mischief.text(good)));
        }

        static Reader ofBytes(int share, List<String> good, Consumer<byte[]> read) {
            return new Reader(share, mischief -> read.accept(mischief.bytes(good)));
        }
    }

    static void readLog(byte[] bytes) {
        Given log = new Given(bytes);
        ReadingChoices choices = new ReadingChoices(List.of(), PositiveCurrent.DISCHARGES, ZoneOffset.UTC);
        Preview preview = LogPreview.of(log, choices, null);
        TraceReader.readParts(log, preview, ZoneOffset.UTC, ReadingProgress.NONE, trace -> {});
    }

    private static Reader archive(Path folder) {
        Map<String, byte[]> files = goodArchive(folder);
        List<String> names = List.copyOf(files.keySet());
        Path path = folder.resolve("hostile.zip");
        @Nullable Book[] into = {null}; // making a book takes longer than refusing an archive
        return new Reader(5, mischief -> {
            try {
                Map<String, byte[]> changed = new LinkedHashMap<>(files);
                String name = mischief.pick(names);
                String text = new String(files.get(name), java.nio.charset.StandardCharsets.UTF_8);
                changed.put(
                        mischief.random.nextInt(8) == 0 ? mischief.scrap() : name,
                        mischief.text(List.of(text)).getBytes(java.nio.charset.StandardCharsets.UTF_8));
                byte[] zip = zip(changed);
                if (mischief.random.nextInt(4) == 0) {
                    zip[mischief.random.nextInt(zip.length)] ^= (byte) (1 << mischief.random.nextInt(8));
                }
                Files.write(path, zip);
                if (into[0] == null) {
                    into[0] = Book.open(Files.createTempDirectory(folder, "into"));
                }
                Import.read(into[0], path);
                into[0].close(); // it took one, and is no longer empty
                into[0] = null;
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        });
    }

    private static Map<String, byte[]> goodArchive(Path folder) {
        Path archive = folder.resolve("good.zip");
        Path home = folder.resolve("exported");
        try (Workshop workshop = Workshop.open(home, Clock.fixed(NOW, ZoneOffset.UTC), "Marten")) {
            workshop.packs()
                    .add(new PackForm("P07", "LiPo", "4S", "5000", "", "", "", "", "", "", "confirmed", "", "")
                            .toPack());
            workshop.entries().enter("P07 3.84 3.83 3.85 3.84 21C rest 2h");
            workshop.entries().enter("P07 charged 1840 mAh");
            workshop.keeping().exportTo(archive);
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return files;
    }

    /** Stored, not deflated: made quickly. */
    static byte[] zip(Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setMethod(ZipOutputStream.STORED);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                CRC32 sum = new CRC32();
                sum.update(file.getValue());
                ZipEntry entry = new ZipEntry(file.getKey().isEmpty() ? "empty" : file.getKey());
                entry.setSize(file.getValue().length);
                entry.setCrc(sum.getValue());
                zip.putNextEntry(entry);
                zip.write(file.getValue());
            }
        }
        return bytes.toByteArray();
    }

    /** A log in memory. */
    record Given(byte[] content) implements LogFile {
        @Override
        public String name() {
            return "made-up.csv";
        }

        @Override
        public long bytes() {
            return content.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(content);
        }
    }

    /** One pack and one craft. */
    private static final class Kit implements KnownKit {
        private final Pack pack = new Pack(
                "P07",
                Chemistry.LIPO,
                4,
                1,
                18_000,
                null,
                null,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
        private final KnownPack known =
                new KnownPack(pack, false, RuleSet.of(List.of()).limitsFor(Chemistry.LIPO, "P07", List.of()));
        private final Craft craft = new Craft("Heron", CraftKind.GLIDER, 4, "", null, null, "", "");

        @Override
        public Optional<KnownPack> pack(String tag) {
            return tag.equalsIgnoreCase("P07") ? Optional.of(known) : Optional.empty();
        }

        @Override
        public List<String> tagsNear(String tag) {
            return List.of("P07");
        }

        @Override
        public Optional<Craft> craft(String name) {
            return name.equalsIgnoreCase("Heron") ? Optional.of(craft) : Optional.empty();
        }

        @Override
        public List<String> craftNear(String name) {
            return List.of("Heron");
        }
    }
}
