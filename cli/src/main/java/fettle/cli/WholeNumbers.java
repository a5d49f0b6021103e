package fettle.cli;

import picocli.CommandLine.TypeConversionException;

/** Reads whole numbers, and says so of what is none. */
final class WholeNumbers {
    private WholeNumbers() {}

    static int integer(String typed) {
        try {
            return Integer.parseInt(typed.strip());
        } catch (NumberFormatException none) {
            throw refusal(typed);
        }
    }

    static long number(String typed) {
        try {
            return Long.parseLong(typed.strip());
        } catch (NumberFormatException none) {
            throw refusal(typed);
        }
    }

    private static TypeConversionException refusal(String typed) {
        return new TypeConversionException("\"" + typed + "\" is not a whole number");
    }
}
