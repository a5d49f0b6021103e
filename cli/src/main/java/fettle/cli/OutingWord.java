package fettle.cli;

import fettle.engine.outing.KeptPlan;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.JournalEntry;
import fettle.workshop.NowNext;
import fettle.workshop.OutingPapers;
import fettle.workshop.OutingState;
import fettle.workshop.PlanSpeed;
import fettle.workshop.Workshop;
import java.util.List;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The words under {@code fettle outing} that no kit has. */
final class OutingWord {
    private OutingWord() {}

    /** {@code fettle outing show}. */
    @Command
    static final class Show extends OfOuting {
        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                OutingState state = workshop.outings().find(name);
                session.print(state, OutingText.of(state));
            }
        }
    }

    /** {@code fettle outing plan}. */
    @Command(
            name = "plan",
            description = "Plans an outing from now on, keeps the plan and shows it. Stopped with Ctrl-C, the best plan"
                    + " so far is lost; give less time instead.",
            footer = {"", "For example:", "  fettle outing plan \"Lake day\" --seconds 5"})
    static final class Make extends OfOuting {
        @Option(
                names = "--seconds",
                paramLabel = "TIME",
                description = "How long to search at most. Default: 10 s; less if it is proven best before.")
        private String seconds = "";

        @Override
        public void run() {
            PlanSpeed speed = PlanSpeed.parse(seconds);
            try (Workshop workshop = session.open()) {
                KeptPlan plan = workshop.outings().plan(name, speed, new Telling(session));
                session.print(plan, OutingText.plan(plan, workshop.outings().find(name)));
            }
        }
    }

    /** Tells of the first plan, and of every better one. */
    private static final class Telling implements Predicate<KeptPlan> {
        private final Session session;
        private String told = "";

        Telling(Session session) {
            this.session = session;
        }

        @Override
        public boolean test(KeptPlan best) {
            String words = OutingText.goals(best);
            if (!words.equals(told)) {
                told = words;
                session.progress((long) best.seconds() + " s: " + words);
            }
            return true;
        }
    }

    /** {@code fettle outing why}. */
    @Command(
            name = "why",
            description = "Says what the latest plan does with a pack or a run, or the constraint that keeps it out.",
            footer = {"", "For example:", "  fettle outing why \"Lake day\" P07"})
    static final class Why extends OfOuting {
        @Parameters(index = "1", paramLabel = "WHAT", description = "A pack's tag or a run, e.g. \"Heron 2\".")
        private String what = "";

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                List<String> reasons = workshop.outings().why(name, what);
                session.print(reasons, String.join(System.lineSeparator(), reasons));
            }
        }
    }

    /** {@code fettle outing now}. */
    @Command(
            name = "now",
            description = "Shows what goes on and what comes next.",
            footer = {"", "For example:", "  fettle outing now \"Lake day\""})
    static final class Now extends OfOuting {
        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                NowNext now = workshop.outings().now(name);
                session.print(now, OutingText.now(now, workshop.outings().find(name)));
            }
        }
    }

    /** {@code fettle outing papers}. */
    @Command(
            name = "papers",
            description = "Shows what to take along: a timer for every planned run, and the packs as baggage by air.",
            footer = {"", "For example:", "  fettle outing papers \"Lake day\""})
    static final class Take extends OfOuting {
        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                OutingPapers papers = workshop.outings().papers(name);
                session.print(papers, OutingText.papers(papers));
            }
        }
    }

    /** {@code fettle outing settle}. */
    @Command(
            name = "settle",
            description = "Settles something, so that every later plan keeps it.",
            footer = {
                "",
                "For example:",
                "  fettle outing settle \"Lake day\" \"Heron 1 with P07\"",
                "  fettle outing settle \"Lake day\" \"Heron 2 at 10:30\"",
                "  fettle outing settle \"Lake day\" \"not P08\""
            })
    static final class Settle extends Change {
        @Override
        JournalEntry make(Workshop workshop) {
            return workshop.outings().settle(name, what);
        }
    }

    /** {@code fettle outing release}. */
    @Command(
            name = "release",
            description = "Leaves open again what was settled; write it as it was settled.",
            footer = {"", "For example:", "  fettle outing release \"Lake day\" \"not P08\""})
    static final class Release extends Change {
        @Override
        JournalEntry make(Workshop workshop) {
            return workshop.outings().unsettle(name, what);
        }
    }

    /** {@code fettle outing start}. */
    @Command(
            name = "start",
            description = "Notes that a planned run or charge begins now.",
            footer = {"", "For example:", "  fettle outing start \"Lake day\" \"Heron 1\""})
    static final class Start extends Change {
        @Override
        JournalEntry make(Workshop workshop) {
            return workshop.outings().began(name, what);
        }
    }

    /** {@code fettle outing finish}. */
    @Command(
            name = "finish",
            description = "Notes that a run or charge ends now.",
            footer = {"", "For example:", "  fettle outing finish \"Lake day\" \"Heron 1\""})
    static final class Finish extends Change {
        @Override
        JournalEntry make(Workshop workshop) {
            return workshop.outings().ended(name, what);
        }
    }

    /** {@code fettle outing put-back}. */
    @Command(
            name = "put-back",
            description =
                    "Notes what was put back into each pack of a run; the packs' record gets the run and the charge.",
            footer = {"", "For example:", "  fettle outing put-back \"Lake day\" \"Heron 1\" 1400mAh"})
    static final class PutBack extends Change {
        @Parameters(index = "2", paramLabel = "CHARGE", description = "E.g. 1400mAh.")
        private String charge = "";

        @Override
        JournalEntry make(Workshop workshop) {
            double coulombs =
                    QuantityText.si("charge", "charge put back", charge, Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR);
            return workshop.outings().putBack(name, what, coulombs);
        }
    }

    /** What every word about one outing shares. */
    abstract static class OfOuting implements Runnable {
        @Mixin
        final Session session = new Session();

        @Parameters(index = "0", paramLabel = "NAME", description = "The outing's name.")
        String name = "";
    }

    /** What every word that changes an outing shares. */
    abstract static class Change extends OfOuting {
        @Parameters(index = "1", paramLabel = "WHAT", description = "A run, a charge, or what is settled.")
        String what = "";

        abstract JournalEntry make(Workshop workshop);

        @Override
        public void run() {
            try (Workshop workshop = session.open()) {
                JournalEntry entry = make(workshop);
                session.print(entry, entry.sentence());
            }
        }
    }
}
