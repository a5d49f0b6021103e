package fettle.reliability;

import fettle.engine.units.InputException;
import fettle.workshop.BookException;
import fettle.workshop.CraftForm;
import fettle.workshop.JournalEntry;
import fettle.workshop.PackForm;
import fettle.workshop.TraceChoices;
import fettle.workshop.TraceProgress;
import fettle.workshop.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * A process of its own that works in a book as a person does, and says each entry's number once it is saved.
 *
 * <p>{@code write FOLDER LOGS} goes on until it is killed or refused; {@code visit FOLDER LOGS} does the same and opens the
 * book anew for each entry; {@code read FOLDER} tells the journal, after what verification finds.
 */
public final class Scribe {
    private static final int REFUSED = 1;
    private static final int ALL = 1_000_000;
    private static final TraceChoices DISCHARGES = new TraceChoices("", "discharge", "", "", "");

    private Scribe() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[1]);
        try {
            switch (arguments[0]) {
                case "write" -> write(folder, Path.of(arguments[2]));
                case "visit" -> visit(folder, Path.of(arguments[2]));
                default -> read(folder);
            }
        } catch (BookException | InputException refused) {
            System.err.println("refused: " + refused.getMessage());
            System.exit(REFUSED);
        }
    }

    private static Workshop open(Path folder) {
        return Workshop.open(folder, Clock.systemUTC(), "Marten");
    }

    private static void write(Path folder, Path logs) throws IOException {
        try (Workshop workshop = open(folder)) {
            furnish(workshop);
            for (long step = latest(workshop); ; step++) {
                say(enter(workshop, logs, step));
            }
        }
    }

    private static void visit(Path folder, Path logs) throws IOException {
        try (Workshop workshop = open(folder)) {
            furnish(workshop);
        }
        for (long step = 1; ; step++) {
            try (Workshop workshop = open(folder)) {
                say(enter(workshop, logs, step));
            }
        }
    }

    private static void read(Path folder) {
        try (Workshop workshop = open(folder)) {
            List<String> faults = workshop.keeping().verify();
            System.out.println(faults.isEmpty() ? "whole" : String.join("\n", faults));
            List<JournalEntry> journal = new ArrayList<>(workshop.history().recent(0, ALL));
            Collections.reverse(journal);
            journal.forEach(Scribe::say);
        }
    }

    private static long latest(Workshop workshop) {
        return workshop.history().recent(0, 1).get(0).id();
    }

    private static void furnish(Workshop workshop) {
        if (workshop.craft().list().isEmpty()) {
            say(workshop.craft().add(new CraftForm("Heron", "glider", "4S", "", "", "", "", "").toCraft()));
        }
        if (workshop.packs().list().isEmpty()) {
            say(workshop.packs()
                    .add(new PackForm("P07", "LiPo", "4S", "5000", "", "", "", "", "", "", "confirmed", "", "")
                            .toPack()));
        }
    }

    private static JournalEntry enter(Workshop workshop, Path logs, long step) throws IOException {
        return switch ((int) (step % 4)) {
            case 0 -> workshop.entries().enter("P07 3.84 3.83 3.85 3.84 21C rest 2h note step " + step);
            case 1 -> workshop.entries().enter("P07 charged " + (1000 + step % 3000) + " mAh note step " + step);
            case 2 ->
                workshop.setUps().add("Heron", "rudder; tail; 1100 1500 1900; 50 mm; all 20/16", null, "step " + step);
            default ->
                workshop.traces()
                        .add("P07", log(logs, step), DISCHARGES, TraceProgress.NONE)
                        .entry();
        };
    }

    private static Path log(Path logs, long step) throws IOException {
        StringBuilder log = new StringBuilder("time_s,volts,amps\n");
        for (int second = 0; second < 20; second++) {
            log.append(String.format(Locale.ROOT, "%d,%.3f,%.2f%n", second, 16 - second * 0.01, step % 1000 / 100.0));
        }
        // a comment of its own makes every log another file
        return Files.writeString(logs.resolve("log.csv"), "# step " + step + "\n" + log);
    }

    private static void say(JournalEntry entry) {
        System.out.println(entry.id() + " " + entry.sentence());
        System.out.flush();
    }
}
