package fettle.workshop.entry;

import fettle.engine.units.Figure;
import fettle.engine.units.Measure;
import java.util.ArrayList;
import java.util.List;

/** Cuts a line into words. Not thread-safe. */
final class Lexer {
    /** What a line measures; a unit of these may stand apart from its number. */
    static final List<Measure> MEASURES = List.of(
            Measure.VOLTAGE,
            Measure.TEMPERATURE,
            Measure.DURATION,
            Measure.RESISTANCE,
            Measure.CHARGE,
            Measure.FRACTION);

    private static final String OPENING = "\"“„«";
    private static final String CLOSING = "\"”“»";
    private static final String SEPARATORS = ",;:";

    /** Phone keyboards end a word with this for two spaces. A tag may end with it, so the first word keeps it. */
    private static final String STOP = ".";

    private static final String PER_CELL = "/cell";

    private final String line;
    private final Remarks remarks;
    private final List<Word> words = new ArrayList<>();
    private int at;

    private Lexer(String line, Remarks remarks) {
        this.line = line;
        this.remarks = remarks;
    }

    /**
     * Words in order. Separators behind them are taken off; a unit apart from its number is joined to it; all behind
     * {@code note} is one word, unless it is quoted.
     */
    static List<Word> words(String line, Remarks remarks) {
        Lexer lexer = new Lexer(line, remarks);
        while (lexer.skipSpace()) {
            lexer.word();
        }
        return lexer.words;
    }

    private boolean skipSpace() {
        while (at < line.length() && isSpace(line.charAt(at))) {
            at++;
        }
        return at < line.length();
    }

    private void word() {
        if (OPENING.indexOf(line.charAt(at)) >= 0) {
            quoted();
            return;
        }
        int start = at;
        while (at < line.length() && !isSpace(line.charAt(at))) {
            at++;
        }
        String separators = words.isEmpty() ? SEPARATORS : SEPARATORS + STOP;
        int end = at;
        while (end > start && separators.indexOf(line.charAt(end - 1)) >= 0) {
            end--;
        }
        if (end > start) {
            plain(start, line.substring(start, end));
        }
    }

    private void plain(int start, String text) {
        int figureEnd = text.length() - PER_CELL.length();
        if (figureEnd > 0 && text.regionMatches(true, figureEnd, PER_CELL, 0, PER_CELL.length())) {
            add(start, text.substring(0, figureEnd));
            add(start + figureEnd, text.substring(figureEnd));
        } else {
            add(start, text);
        }
    }

    private void add(int start, String text) {
        Word word = new Word(start + 1, text, text, false);
        if (!words.isEmpty() && isUnitOf(words.get(words.size() - 1), word)) {
            Word number = words.remove(words.size() - 1);
            String part = line.substring(number.column() - 1, start + text.length());
            words.add(new Word(number.column(), part, number.text() + " " + text, false));
            return;
        }
        words.add(word);
        if (words.size() > 1 && word.is("note")) {
            freeText();
        }
    }

    private void quoted() {
        int start = at;
        int end = start + 1;
        while (end < line.length() && CLOSING.indexOf(line.charAt(end)) < 0) {
            end++;
        }
        at = Math.min(end + 1, line.length());
        Word word = new Word(
                start + 1,
                line.substring(start, at),
                line.substring(start + 1, end).strip(),
                true);
        words.add(word);
        if (end == line.length()) {
            remarks.problem(word, "the quote is not closed. Put a second \" where it ends.");
        }
    }

    private void freeText() {
        if (skipSpace() && OPENING.indexOf(line.charAt(at)) < 0) {
            String rest = line.substring(at);
            words.add(new Word(at + 1, rest, rest.strip(), true));
            at = line.length();
        }
    }

    private static boolean isUnitOf(Word number, Word unit) {
        boolean bare = !number.quoted()
                && Figure.of(number.text())
                        .filter(figure -> figure.unit().isEmpty())
                        .isPresent();
        return bare
                && MEASURES.stream()
                        .anyMatch(measure -> measure.unit(unit.text()).isPresent());
    }

    /** Also the no-break spaces of pasted text, and control characters. */
    private static boolean isSpace(char character) {
        return Character.isWhitespace(character)
                || Character.isSpaceChar(character)
                || Character.isISOControl(character);
    }
}
