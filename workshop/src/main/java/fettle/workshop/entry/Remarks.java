package fettle.workshop.entry;

import fettle.engine.units.InputException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Everything found while reading one line. Not thread-safe. */
final class Remarks {
    private final List<String> understood = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();

    void understood(String phrase) {
        understood.add(phrase);
    }

    void question(String sentence) {
        questions.add(sentence);
    }

    void problem(Word word, String sentence) {
        problems.add(new Problem(word.column(), word.part(), sentence));
    }

    boolean hasProblems() {
        return !problems.isEmpty();
    }

    private boolean hasProblemAt(Word word) {
        return problems.stream().anyMatch(problem -> problem.column() == word.column());
    }

    /** What a reader makes of a word; its refusal becomes a problem at that word. */
    <T> Optional<T> read(Word word, Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (InputException refused) {
            refused.faults().forEach(fault -> problem(word, fault.sentence()));
            return Optional.empty();
        }
    }

    /**
     * The record made of all words; what it refuses becomes problems at the words its fields came from, one a word.
     *
     * @param origins the word of each field
     * @param otherwise the word for a fault of no field, told only if nothing else is wrong
     */
    <T> Optional<T> make(Supplier<T> maker, Map<String, Word> origins, Word otherwise) {
        try {
            T made = maker.get();
            return hasProblems() ? Optional.empty() : Optional.of(made);
        } catch (InputException refused) {
            boolean alone = !hasProblems();
            refused.faults().forEach(fault -> {
                Word origin = origins.get(fault.field());
                boolean newWord = origin != null && !hasProblemAt(origin);
                if (newWord || (origin == null && alone)) {
                    problem(origin == null ? otherwise : origin, fault.sentence());
                }
            });
            return Optional.empty();
        }
    }

    List<String> understood() {
        return List.copyOf(understood);
    }

    List<Problem> problems() {
        return problems.stream()
                .sorted(Comparator.comparingInt(Problem::column))
                .toList();
    }

    List<String> questions() {
        return List.copyOf(questions);
    }
}
