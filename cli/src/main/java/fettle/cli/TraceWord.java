package fettle.cli;

import fettle.engine.health.TraceHealth;
import fettle.workshop.JournalEntry;
import fettle.workshop.KeptTrace;
import fettle.workshop.RegisterReading;
import fettle.workshop.Registers;
import fettle.workshop.TraceAdded;
import fettle.workshop.TraceChoices;
import fettle.workshop.TracePreview;
import fettle.workshop.TraceProgress;
import fettle.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The words under {@code fettle trace}. */
final class TraceWord {
    private TraceWord() {}

    /** {@code fettle trace add}. */
    @Command(
            name = "add",
            description = "Reads a log of a pack, tells what is in it and keeps it as received.",
            footer = {
                "",
                "For example:",
                "  fettle trace add P07 flight.csv",
                "  fettle trace add P07 flight.csv --preview",
                "  fettle trace add P07 flight.csv --columns time=1:s,volts=Pack:mV,cell1=4:V --positive discharge"
            })
    static final class AddTrace implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(index = "0", paramLabel = "TAG", description = "The pack's tag.")
        private String tag = "";

        @Parameters(index = "1", paramLabel = "FILE", description = "A table of figures: CSV or TSV, perhaps gzip.")
        private Path file = Path.of("");

        @Option(
                names = "--columns",
                paramLabel = "USES",
                description = "Which column is what, where its heading does not say.")
        private String columns = "";

        @Option(
                names = "--positive",
                paramLabel = "discharge|charge",
                description = "What a positive current means, where it cannot be told.")
        private String positive = "";

        @Option(names = "--zone", paramLabel = "ZONE", description = "Time zone of its clock. Default: UTC.")
        private String zone = "";

        @Option(names = "--one-pack", description = "It is one pack, though its volts rise with no charge in the log.")
        private boolean onePack;

        @Option(names = "--note", description = "Free text kept with it.")
        private String note = "";

        @Option(names = "--preview", description = "Say what it would be read as, and save nothing.")
        private boolean preview;

        @Override
        public void run() {
            TraceChoices choices = new TraceChoices(columns, positive, zone, note, onePack ? "one" : "");
            try (Workshop workshop = session.open()) {
                if (preview) {
                    TracePreview seen = workshop.traces().preview(file, choices);
                    session.print(seen, TraceText.preview(seen));
                } else {
                    TraceAdded added = workshop.traces().add(tag, file, choices, new Percent(session));
                    session.print(
                            added,
                            added.entry().sentence()
                                    + System.lineSeparator()
                                    + TraceText.full(added.trace(), session.zone()));
                }
            }
        }
    }

    /** Tells every tenth of a long reading. */
    private static final class Percent implements TraceProgress {
        private static final long LONG_BYTES = 20_000_000;
        private static final int TENTHS = 10;

        private final Session session;
        private long told;

        Percent(Session session) {
            this.session = session;
        }

        @Override
        public boolean goOn(long doneBytes, long totalBytes) {
            long tenth = totalBytes < LONG_BYTES ? 0 : TENTHS * doneBytes / totalBytes;
            if (tenth > told) {
                told = tenth;
                session.progress("read " + TENTHS * tenth + " %");
            }
            return true;
        }
    }

    /** {@code fettle trace list}. */
    @Command(
            name = "list",
            description = "Lists traces, newest first.",
            footer = {"", "For example:", "  fettle trace list --pack P07"})
    static final class ListTraces implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Option(names = "--pack", paramLabel = "TAG", description = "Of one pack only.")
        private @Nullable String tag;

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                List<KeptTrace> traces = tag == null
                        ? workshop.traces().list()
                        : workshop.traces().ofPack(tag);
                session.print(
                        traces,
                        traces.stream()
                                .map(trace -> TraceText.line(trace, session.zone()))
                                .collect(Collectors.joining(System.lineSeparator())));
                if (traces.isEmpty()) {
                    session.progress("none yet. Add one: fettle trace add --help");
                }
            }
        }
    }

    /** {@code fettle trace show}. */
    @Command(
            name = "show",
            description = "Shows what is in a trace: segments, charge and energy, events.",
            footer = {"", "For example:", "  fettle trace show 1"})
    static final class ShowTrace implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "NUMBER", description = "Its number, as trace list shows it.")
        private long id;

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                KeptTrace trace = workshop.traces().find(id);
                session.print(trace, TraceText.full(trace, session.zone()));
            }
        }
    }

    /** {@code fettle trace resistance}. */
    @Command(
            name = "resistance",
            description = "Finds each cell's resistance in the longest run of a trace.",
            footer = {"", "For example:", "  fettle trace resistance 1"})
    static final class ResistanceOfTrace implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "NUMBER", description = "Its number, as trace list shows it.")
        private long id;

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                KeptTrace trace = workshop.traces().find(id);
                TraceHealth health =
                        workshop.traces().health(trace, workshop.traces().read(id));
                session.print(health, ResistanceText.of(health));
            }
        }
    }

    /** {@code fettle trace acknowledge}. */
    @Command(
            name = "acknowledge",
            description = "Notes that what a trace shows past a limit was looked into; it then no longer counts.",
            footer = {"", "For example:", "  fettle trace acknowledge 1 \"no swelling, all cells 3.85 V after a day\""})
    static final class AcknowledgeTrace implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(index = "0", paramLabel = "NUMBER", description = "Its number, as trace list shows it.")
        private long id;

        @Parameters(index = "1", arity = "1..*", paramLabel = "FOUND", description = "What was found, in words.")
        private List<String> found = List.of();

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                JournalEntry entry = workshop.traces().acknowledge(id, String.join(" ", found));
                session.print(entry, entry.sentence());
            }
        }
    }

    /** {@code fettle trace export}. */
    @Command(
            name = "export",
            description = "Writes a trace in the open Battery Data Format 1.3 (charging positive).",
            footer = {"", "For example:", "  fettle trace export 1 P07.bdf.csv"})
    static final class ExportTrace implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(index = "0", paramLabel = "NUMBER", description = "Its number, as trace list shows it.")
        private long id;

        @Parameters(index = "1", paramLabel = "FILE", description = "A new file, e.g. P07.bdf.csv.")
        private Path file = Path.of("");

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                workshop.traces().export(id, file);
                session.print(List.of(file.toString()), "wrote trace " + id + " to " + file);
            }
        }
    }

    /** {@code fettle trace registers}. */
    @Command(
            name = "registers",
            mixinStandardHelpOptions = true,
            description = "Tells what a dump of a pack's registers says (Smart Battery Data Specification 1.1).",
            footer = {
                "",
                "The file lists one register a line, by name or command code, then its raw word:",
                "  Voltage,0x3138",
                "  0x0A 65535",
                "",
                "For example:",
                "  fettle trace registers dump.csv"
            })
    static final class TellRegisters implements Runnable {
        @Mixin
        private final Session session = new Session();

        @Parameters(paramLabel = "FILE", description = "The dump.")
        private Path file = Path.of("");

        @Override
        public void run() {
            RegisterReading reading = Registers.read(file);
            session.print(reading, TraceText.registers(reading));
        }
    }
}
