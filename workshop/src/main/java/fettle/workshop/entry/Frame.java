package fettle.workshop.entry;

import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What checks, charges and runs have in common: the pack, when, temperature and note. Not thread-safe. */
final class Frame {
    private static final List<String> KEYWORDS =
            List.of("note", "temp", "temperature", "at", "on", "yesterday", "today");

    private final @Nullable KnownPack pack;
    private final Word tag;
    private final Remarks remarks;
    private final Quantities quantities;
    private final Moment moment;
    private final Once<Double> kelvins = new Once<>("the temperature");
    private final Once<String> note = new Once<>("the note");
    private final Map<String, Word> origins = new HashMap<>();

    Frame(@Nullable KnownPack pack, Word tag, Clock clock, Remarks remarks) {
        this.pack = pack;
        this.tag = tag;
        this.remarks = remarks;
        this.quantities = new Quantities(remarks);
        this.moment = new Moment(clock, remarks);
    }

    /** Takes a word that all kinds of line know, with what follows it. Returns whether it was one. */
    boolean take(Word word, Words words) {
        if (word.quoted()) {
            note(word);
        } else if (word.is("note")) {
            quantities.behind(word, words, any -> true, "some text").ifPresent(this::note);
        } else if (isTemperature(word)) {
            temperature(word);
        } else if (word.is("temp") || word.is("temperature")) {
            quantities
                    .behind(word, words, Quantities::isNumber, "degrees, e.g. 21C,")
                    .ifPresent(this::temperature);
        } else if (word.is("at") && words.nextIs(Frame::isTemperature)) {
            temperature(words.next());
        } else if (Moment.begins(word, words)) {
            moment.take(word, words);
        } else if (ColonTime.isTime(word)) {
            remarks.problem(word, ColonTime.manyWays(word));
        } else if (Kind.of(word).isPresent()) {
            refuseSecondKind(word, words);
        } else {
            return false;
        }
        return true;
    }

    /** True if a word is one that all kinds of line know. */
    static boolean knows(Word word) {
        return word.quoted() || KEYWORDS.stream().anyMatch(word::is) || Moment.isDay(word) || ColonTime.isTime(word);
    }

    /** A word nobody knows what to do with. */
    void unknown(Word word, List<String> keywords, String expected) {
        List<String> known = Stream.concat(keywords.stream(), KEYWORDS.stream()).toList();
        remarks.problem(word, Hints.unknown(word, known, expected));
    }

    /** The record of this line, if nothing stands in the way. */
    <T> Optional<T> make(Supplier<T> maker, String temperatureField) {
        Word said = kelvins.word();
        if (said != null) {
            origins.put(temperatureField, said);
        }
        askIfTooWarm();
        askIfBeforeBought();
        return remarks.make(maker, origins, tag);
    }

    /** The word a field of the record came from, for its faults. */
    void origin(String field, Word word) {
        origins.put(field, word);
    }

    @Nullable
    KnownPack pack() {
        return pack;
    }

    Remarks remarks() {
        return remarks;
    }

    Quantities quantities() {
        return quantities;
    }

    Instant instant() {
        return moment.instant();
    }

    @Nullable
    Double kelvins() {
        return kelvins.value();
    }

    String note() {
        return Optional.ofNullable(note.value()).orElse("");
    }

    private static boolean isTemperature(Word word) {
        return Quantities.is(word, Measure.TEMPERATURE);
    }

    /** The words behind it belong to that other thing, so nothing is told of them. */
    private void refuseSecondKind(Word word, Words words) {
        remarks.problem(
                word,
                "\"" + word.text()
                        + "\" stands right behind the pack's tag, and a line tells of one thing. Give it a line "
                        + "of its own.");
        words.skipAll();
    }

    private void note(Word text) {
        if (text.text().isEmpty()) {
            remarks.problem(text, "the note is empty. Write something between the quotes, or leave it out.");
        } else if (note.put(text, text.text(), remarks)) {
            remarks.understood("note: " + text.text());
        }
    }

    private void temperature(Word word) {
        quantities.si(word, "temperature", Measure.TEMPERATURE, null).ifPresent(si -> {
            if (kelvins.put(word, si, remarks)) {
                remarks.understood(TradeUnit.CELSIUS.print(si, 1));
            }
        });
    }

    private void askIfTooWarm() {
        Double said = kelvins.value();
        if (pack != null && said != null) {
            Doubts.temperature(pack, said).forEach(remarks::question);
        }
    }

    private void askIfBeforeBought() {
        LocalDate bought = pack == null ? null : pack.pack().bought();
        if (bought != null && moment.day().isBefore(bought)) {
            remarks.question(moment.day() + " is before the pack was bought (" + bought + "). Is the day right?");
        }
    }
}
