package fettle.cli;

import picocli.CommandLine.Option;

/** {@code --help}, the same on every word. A mixin. */
final class HelpOption {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;
}
