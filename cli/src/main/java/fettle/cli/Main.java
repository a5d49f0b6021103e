package fettle.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;

/** Where the process starts and ends. */
public final class Main {
    private static final List<String> ENTRY_WORDS = List.of("check", "charged", "ran");
    private static final List<Class<?>> RULE_WORDS =
            List.of(RuleWord.ListRules.class, RuleWord.SetRule.class, RuleWord.ResetRule.class);
    private static final List<Class<?>> BOOK_WORDS = List.of(
            BookWord.Backup.class,
            BookWord.Restore.class,
            BookWord.Verify.class,
            BookWord.Export.class,
            BookWord.Import.class);

    private static final List<Class<?>> WORK_WORDS = List.of(SimulateWord.class);

    private Main() {}

    public static void main(String[] arguments) {
        Stopping stopping = new Stopping();
        int code = commandLine(Surroundings.ofProcess(stopping::await))
                .setOut(writer(System.out))
                .setErr(writer(System.err))
                .execute(arguments);
        stopping.release();
        System.exit(code);
    }

    /** The whole command line, ready to execute. */
    static CommandLine commandLine(Surroundings surroundings) {
        CommandLine root = new CommandLine(new Fettle(surroundings));
        KitWords.addTo(root);
        root.addSubcommand("rule", group("Lists and changes the rules.", RULE_WORDS));
        root.addSubcommand("book", group("Keeps the book: backup, export and their way back.", BOOK_WORDS));
        CommandLine work = group("Worksheets: what-if sums that need no book.", WORK_WORDS);
        WorksheetWord.addTo(work);
        root.addSubcommand("work", work);
        for (String entry : ENTRY_WORDS) {
            // a reading may begin with a minus, e.g. -5C
            root.getSubcommands().get(entry).setUnmatchedOptionsArePositionalParams(true);
        }
        Problems problems = new Problems();
        return root.setExecutionExceptionHandler(problems).setParameterExceptionHandler(problems);
    }

    private static CommandLine group(String description, List<Class<?>> words) {
        CommandLine group = new CommandLine(new WordGroup());
        group.getCommandSpec().usageMessage().description(description);
        words.forEach(group::addSubcommand);
        return group;
    }

    // UTF-8 whatever the locale says: the glyphs and units are part of the answer
    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
