package fettle.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A word that only groups others: alone it says which. */
@Command(synopsisSubcommandLabel = "WORD …", commandListHeading = "Words:%n")
final class WordGroup implements Runnable {
    @Mixin
    private final HelpOption help = new HelpOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "say what to do: " + spec.qualifiedName() + " "
                        + String.join("|", spec.subcommands().keySet()));
    }
}
