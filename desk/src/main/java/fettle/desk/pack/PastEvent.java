package fettle.desk.pack;

import fettle.desk.frame.Figures;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import fettle.engine.units.TradeUnit;
import fettle.workshop.PastLimit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One thing recorded of a pack.
 *
 * @param at when
 * @param date the same, printed
 * @param kind {@code check}, {@code charge}, {@code run} or {@code exception}
 * @param text what was recorded
 */
public record PastEvent(Instant at, String date, String kind, String text) {

    static List<PastEvent> newestFirst(PackHistory history, List<PastLimit> exceptions, Figures figures) {
        return Stream.of(
                        history.checks().stream().map(check -> of(check, figures)),
                        history.charges().stream().map(charge -> of(charge, figures)),
                        history.runs().stream().map(run -> of(run, figures)),
                        exceptions.stream().flatMap(exception -> of(exception, figures).stream()))
                .flatMap(events -> events)
                .sorted(Comparator.comparing(PastEvent::at).reversed())
                .toList();
    }

    /** One without a date has no place among what happened; it stands with its trace. */
    private static Optional<PastEvent> of(PastLimit exception, Figures figures) {
        return Optional.ofNullable(exception.at())
                .map(at -> event(
                        at,
                        "exception",
                        new ArrayList<>(List.of(
                                exception.event().sentence() + " (trace " + exception.trace() + ")",
                                exception.acknowledged().isEmpty() ? "not looked into" : "looked into")),
                        exception.acknowledged(),
                        figures));
    }

    private static PastEvent of(Check check, Figures figures) {
        List<String> parts = new ArrayList<>();
        if (!check.cellRestVolts().isEmpty()) {
            parts.add(figuresOf(check.cellRestVolts(), TradeUnit.VOLT, 3));
        }
        add(parts, "pack ", check.packRestVolts(), TradeUnit.VOLT, 2);
        add(parts, "", check.temperatureKelvins(), TradeUnit.CELSIUS, 0);
        add(parts, "rested ", check.restSeconds(), TradeUnit.HOUR, 1);
        if (!check.cellResistanceOhms().isEmpty()) {
            String method = check.resistanceMethod().isBlank() ? "" : " (" + check.resistanceMethod() + ")";
            parts.add("resistance " + figuresOf(check.cellResistanceOhms(), TradeUnit.MILLIOHM, 1) + method);
        }
        check.signs().stream().sorted().map(Check.Sign::label).forEach(parts::add);
        return event(check.takenAt(), "check", parts, check.note(), figures);
    }

    private static PastEvent of(ChargeRecord charge, Figures figures) {
        List<String> parts = new ArrayList<>();
        add(parts, "put back ", charge.returnedCoulombs(), TradeUnit.MILLIAMPERE_HOUR, 0);
        add(parts, "to ", charge.endPackVolts(), TradeUnit.VOLT, 2);
        add(parts, "warmest ", charge.warmestKelvins(), TradeUnit.CELSIUS, 0);
        return event(charge.endedAt(), "charge", parts, charge.note(), figures);
    }

    private static PastEvent of(Run run, Figures figures) {
        List<String> parts = new ArrayList<>();
        if (!run.craft().isBlank()) {
            parts.add(run.craft());
        }
        add(parts, "", run.durationSeconds(), TradeUnit.MINUTE, 1);
        add(parts, "left ", run.remainingFraction(), TradeUnit.PERCENT, 0);
        add(parts, "left ", run.remainingPackVolts(), TradeUnit.VOLT, 2);
        add(parts, "warmest ", run.warmestKelvins(), TradeUnit.CELSIUS, 0);
        return event(run.endedAt(), "run", parts, run.note(), figures);
    }

    private static PastEvent event(Instant at, String kind, List<String> parts, String note, Figures figures) {
        if (!note.isBlank()) {
            parts.add(note);
        }
        return new PastEvent(at, figures.moment(at), kind, Figures.unbroken(String.join(", ", parts)));
    }

    private static void add(List<String> parts, String before, @Nullable Double si, TradeUnit unit, int decimals) {
        if (si != null) {
            parts.add(before + unit.print(si, decimals));
        }
    }

    private static String figuresOf(List<Double> si, TradeUnit unit, int decimals) {
        return si.stream()
                        .map(value -> String.format(Locale.ROOT, "%." + decimals + "f", unit.fromSi(value)))
                        .collect(Collectors.joining(" "))
                + " " + unit.symbol();
    }
}
