package fettle.book.intake;

import fettle.engine.trace.register.Register;
import fettle.engine.trace.register.RegisterText;
import fettle.engine.trace.register.Scaling;
import fettle.engine.units.InputException;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Registers of a pack that speaks the Smart Battery Data Specification 1.1, as a file lists them: one a line, by name or
 * command code, then its raw word in hexadecimal ({@code 0x0BA6}) or decimal.
 *
 * @param words raw words by register, in the order of their command codes
 * @param scaling what they are read by
 * @param remarks lines that were passed over, in sentences
 */
public record RegisterDump(Map<Register, Integer> words, Scaling scaling, List<String> remarks) {
    private static final Pattern LINE =
            Pattern.compile("^\\s*\"?(\\w+)\"?\\s*[,;:=\\t ]\\s*\"?(0[xX][0-9A-Fa-f]{1,4}|\\d{1,5})\"?\\b.*$");
    private static final int LARGEST_WORD = 0xFFFF;
    private static final int MOST_LINES = 1_000;
    private static final int MOST_REMARKS = 10;

    public RegisterDump {
        words = Map.copyOf(words);
        remarks = List.copyOf(remarks);
    }

    /**
     * Reads a dump.
     *
     * @throws InputException if it is no text or lists no register
     */
    public static RegisterDump read(LogFile file) {
        Map<Register, Integer> words = new EnumMap<>(Register.class);
        List<String> remarks = new ArrayList<>();
        try (LogText.Opened text = LogText.open(file, ReadingProgress.NONE);
                BufferedReader lines = new BufferedReader(text.reader())) {
            int number = 0;
            for (String line = lines.readLine(); line != null && number < MOST_LINES; line = lines.readLine()) {
                number++;
                take(line, number, words, remarks);
            }
        } catch (IOException unreadable) {
            throw new InputException("file", file.name() + " cannot be read: " + unreadable.getMessage() + ".");
        }
        if (words.isEmpty()) {
            throw new InputException(
                    "file",
                    file.name() + " lists no register; expected lines like Voltage,0x3138 or 0x09 12600, one a line.");
        }
        Scaling scaling = Scaling.of(
                words.getOrDefault(Register.SPECIFICATION_INFO, 0), words.getOrDefault(Register.BATTERY_MODE, 0));
        return new RegisterDump(words, scaling, remarks);
    }

    private static void take(String line, int number, Map<Register, Integer> words, List<String> remarks) {
        Matcher parts = LINE.matcher(line);
        Optional<Register> register = parts.matches() ? Register.named(parts.group(1)) : Optional.empty();
        boolean listed = register.isPresent() && Integer.decode(decimal(parts.group(2))) <= LARGEST_WORD;
        if (listed) {
            words.put(register.get(), Integer.decode(decimal(parts.group(2))));
        } else if (!line.isBlank() && number > 1 && remarks.size() < MOST_REMARKS) {
            remarks.add("line " + number + " is no register with a word of 16 bits and was passed over.");
        }
    }

    /** Leading zeros of a decimal number would make it octal. */
    private static String decimal(String written) {
        return written.matches("0\\d+") ? written.replaceFirst("^0+(?=\\d)", "") : written;
    }

    /** What a register says; empty if it was not listed. */
    public Optional<String> text(Register register) {
        return Optional.ofNullable(words.get(register)).map(word -> RegisterText.of(register, word, scaling));
    }
}
