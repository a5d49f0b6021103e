package fettle.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command with all its words. */
@Command(
        name = "fettle",
        mixinStandardHelpOptions = true,
        version = "Fettle 0.1.0",
        description = "The bench book for battery packs and the craft they power.",
        synopsisSubcommandLabel = "WORD …",
        commandListHeading = "Words:%n",
        footer = {
            "",
            "Start with: fettle demo. Each word says more: fettle check --help",
            "Exit codes: 0 done, 1 cannot be done, 2 usage, 70 a fault of Fettle."
        },
        subcommands = {
            DemoWord.class,
            OpenWord.class,
            TodayWord.class,
            CheckWord.class,
            ChecksWord.class,
            ChargedWord.class,
            RanWord.class,
            UndoWord.class,
            JournalWord.class,
            SweepWord.class,
        })
final class Fettle implements Runnable {
    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    Fettle(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    Surroundings surroundings() {
        return surroundings;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say what to do, e.g. fettle today");
    }
}
