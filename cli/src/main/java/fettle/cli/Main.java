package fettle.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.UnmatchedArgumentException;

/** Where the process starts and ends. */
public final class Main {
    private static final List<List<String>> WITH_READINGS =
            List.of(List.of("check"), List.of("charged"), List.of("ran"), List.of("rule", "set"));
    private static final List<Class<?>> RULE_WORDS =
            List.of(RuleWord.ListRules.class, RuleWord.SetRule.class, RuleWord.ResetRule.class);
    private static final List<Class<?>> BOOK_WORDS = List.of(
            BookWord.Backup.class,
            BookWord.Restore.class,
            BookWord.Verify.class,
            BookWord.Export.class,
            BookWord.Import.class);

    private static final List<Class<?>> WORK_WORDS = List.of(SimulateWord.class);
    private static final List<Class<?>> TRACE_WORDS = List.of(
            TraceWord.AddTrace.class,
            TraceWord.ListTraces.class,
            TraceWord.ShowTrace.class,
            TraceWord.ResistanceOfTrace.class,
            TraceWord.AcknowledgeTrace.class,
            TraceWord.ExportTrace.class,
            TraceWord.TellRegisters.class);

    private static final List<Class<?>> SET_UP_WORDS =
            List.of(SetUpWord.AddSheet.class, SetUpWord.ShowSheet.class, SetUpWord.ListSheets.class);

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
        root.addSubcommand("trace", group("Takes logs of packs, and tells what is in them.", TRACE_WORDS));
        CommandLine setUps = group("Keeps set-up sheets of craft, and tells what changed.", SET_UP_WORDS);
        CraftSheetWord.addTo(setUps);
        root.addSubcommand("setup", setUps);
        CommandLine work = group("Worksheets: what-if sums that need no book.", WORK_WORDS);
        WorksheetWord.addTo(work);
        root.addSubcommand("work", work);
        for (List<String> words : WITH_READINGS) {
            CommandLine command = root;
            for (String word : words) {
                command = command.getSubcommands().get(word);
            }
            // a reading may begin with a minus, e.g. -5C
            command.setUnmatchedOptionsArePositionalParams(true);
        }
        lookAlike(root);
        Problems problems = new Problems();
        return root.registerConverter(Integer.class, WholeNumbers::integer)
                .registerConverter(int.class, WholeNumbers::integer)
                .registerConverter(Long.class, WholeNumbers::number)
                .setExecutionStrategy(Main::execute)
                .setExecutionExceptionHandler(problems)
                .setParameterExceptionHandler(problems);
    }

    // where options count as readings, a mistyped option must not: a reading begins with one minus at most
    private static int execute(ParseResult parsed) {
        ParseResult word = parsed;
        while (word.hasSubcommand()) {
            word = word.subcommand();
        }
        List<String> options = word.matchedPositionals().stream()
                .flatMap(argument -> argument.stringValues().stream())
                .filter(typed -> typed.startsWith("--"))
                .distinct()
                .toList();
        if (!options.isEmpty()) {
            throw new UnmatchedArgumentException(word.commandSpec().commandLine(), options);
        }
        return new RunLast().execute(parsed);
    }

    private static void lookAlike(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        spec.usageMessage().width(Wrapped.COLUMNS).sortOptions(false).abbreviateSynopsis(true);
        if (spec.parent() != null && !spec.subcommands().isEmpty()) {
            String first = spec.subcommands().keySet().iterator().next();
            spec.usageMessage()
                    .footer(
                            "",
                            "Each word says more, with an example: " + spec.qualifiedName() + " " + first + " --help");
        }
        command.getSubcommands().values().forEach(Main::lookAlike);
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
