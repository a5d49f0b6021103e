package fettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

/** What every command owes the shell. */
final class ShellAssert {
    private ShellAssert() {}

    static void done(Shell.Result result) {
        assertThat(result.code())
                .as("exit code; error output: %s", result.err())
                .isEqualTo(ExitCode.DONE);
        assertThat(result.err()).doesNotContain("fettle: ");
    }

    /** Refused with one clear line that holds these words, no data, and no stack trace. */
    static void refused(Shell.Result result, String... words) {
        refusedWith(ExitCode.CANNOT, result, words);
        assertThat(result.err().lines().filter(line -> line.startsWith("fettle: ")))
                .hasSize(1);
    }

    /** Refused with a line for every fault, these words among them, no data, and no stack trace. */
    static void refusedForEach(Shell.Result result, String... words) {
        refusedWith(ExitCode.CANNOT, result, words);
        assertThat(result.err().lines()).anyMatch(line -> line.startsWith("fettle: "));
    }

    static void misused(Shell.Result result, String... words) {
        refusedWith(ExitCode.USAGE, result, words);
        assertThat(result.err()).contains("--help");
        assertThat(result.err().lines()).hasSize(1);
    }

    private static void refusedWith(int code, Shell.Result result, String... words) {
        assertThat(result.code())
                .as("exit code; error output: %s", result.err())
                .isEqualTo(code);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(words).doesNotContain("Exception", "\tat ");
    }
}
