package fettle.workshop.entry;

import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What checks, charges and runs have in common: the pack, when, temperature and note. Not thread-safe. */
final class Frame {
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
        if (Moment.begins(word)) {
            moment.take(word, words);
        } else if (word.is("note")) {
            quantities.behind(word, words, any -> true, "some text").ifPresent(text -> {
                if (note.put(text, text.text(), remarks)) {
                    remarks.understood("note: " + text.text());
                }
            });
        } else if (Quantities.is(word, Measure.TEMPERATURE)) {
            quantities.si(word, "temperature", Measure.TEMPERATURE, null).ifPresent(si -> {
                if (kelvins.put(word, si, remarks)) {
                    remarks.understood(TradeUnit.CELSIUS.print(si, 1));
                }
            });
        } else if (Moment.isTime(word)) {
            remarks.problem(
                    word,
                    "\"" + word.text() + "\" can be read two ways. Write at " + word.text()
                            + " for a time of day, or e.g. 7min30 for how long.");
        } else {
            return false;
        }
        return true;
    }

    /** A word nobody knows what to do with. */
    void unknown(Word word, String expected) {
        remarks.problem(word, "\"" + word.text() + "\" is not understood here. Expected " + expected + ".");
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

    Word tag() {
        return tag;
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
