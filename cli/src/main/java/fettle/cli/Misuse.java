package fettle.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What was wrong with a command line, as one sentence with the nearest word and where to read more. */
final class Misuse {
    private Misuse() {}

    static String sentence(ParameterException problem) {
        CommandSpec spec = problem.getCommandLine().getCommandSpec();
        return what(problem, spec) + " See: " + spec.qualifiedName() + " --help";
    }

    private static String what(ParameterException problem, CommandSpec spec) {
        if (problem instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched, spec);
        }
        if (problem instanceof MissingParameterException missing) {
            return missing.getMissing().stream().map(Misuse::named).collect(Collectors.joining(" and "))
                    + " is missing.";
        }
        String message = String.valueOf(problem.getMessage());
        return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1) + ".";
    }

    private static String named(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? option.paramLabel() + " after " + option.longestName()
                : argument.paramLabel();
    }

    private static String unmatched(UnmatchedArgumentException problem, CommandSpec spec) {
        String first = problem.getUnmatched().get(0);
        if (first.startsWith("-")) {
            return "there is no option " + first + "." + near(problem.getSuggestions().stream());
        }
        if (spec.subcommands().isEmpty()) {
            return "\"" + first + "\" is more than " + spec.qualifiedName()
                    + " takes. Put a text of several words in quotes.";
        }
        // picocli's suggestions of words begin with the group here and not there
        return "there is no word \"" + first + "\"."
                + near(problem.getSuggestions().stream()
                        .map(word -> spec.qualifiedName() + " " + word.substring(word.lastIndexOf(' ') + 1)));
    }

    private static String near(Stream<String> names) {
        String joined = names.collect(Collectors.joining(" or "));
        return joined.isEmpty() ? "" : " Did you mean " + joined + "?";
    }
}
