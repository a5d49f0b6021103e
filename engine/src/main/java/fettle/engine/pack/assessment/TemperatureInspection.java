package fettle.engine.pack.assessment;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.TradeUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Entries above the temperature limit, and a pack too warm or too cold to be charged now. */
final class TemperatureInspection implements Inspection {
    @Override
    public String passes() {
        return "no temperature above the limit noted";
    }

    @Override
    public boolean canBeAsked(PackCase packCase) {
        return temperatures(packCase).findAny().isPresent();
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        List<Finding> findings = new ArrayList<>();
        Rule limit = packCase.limits().rule(Quantity.TEMPERATURE_LIMIT);
        temperatures(packCase)
                .filter(noted -> noted.kelvins() > limit.valueSi())
                .reduce((first, second) -> second.kelvins() > first.kelvins() ? second : first)
                .ifPresent(noted -> findings.add(Inspection.against(
                        limit,
                        "over-temperature",
                        Standing.LIMITED,
                        "reached " + TradeUnit.CELSIUS.print(noted.kelvins(), 0) + "; limit " + limit.print(),
                        "Use it for lighter loads and watch its resistance and shape.",
                        List.of("warmest = " + TradeUnit.CELSIUS.print(noted.kelvins(), 1)))));
        chargeWindow(packCase, findings);
        return findings;
    }

    static Stream<Noted> temperatures(PackCase packCase) {
        Stream<Noted> checks = packCase.history().checks().stream()
                .flatMap(check -> Noted.of(check.takenAt(), check.temperatureKelvins()));
        Stream<Noted> charges = packCase.history().charges().stream()
                .flatMap(charge -> Noted.of(charge.endedAt(), charge.warmestKelvins()));
        Stream<Noted> runs =
                packCase.history().runs().stream().flatMap(run -> Noted.of(run.endedAt(), run.warmestKelvins()));
        return Stream.of(checks, charges, runs).flatMap(noted -> noted);
    }

    private static void chargeWindow(PackCase packCase, List<Finding> findings) {
        Double kelvins = packCase.temperatureKelvins();
        if (kelvins == null) {
            return;
        }
        Rule warmest = packCase.limits().rule(Quantity.CHARGE_WARMEST);
        Rule coldest = packCase.limits().rule(Quantity.CHARGE_COLDEST);
        List<String> inputs = List.of("pack = " + TradeUnit.CELSIUS.print(kelvins, 1));
        if (kelvins > warmest.valueSi()) {
            findings.add(Inspection.against(
                    warmest,
                    "too-warm",
                    Standing.TEND,
                    "is at " + TradeUnit.CELSIUS.print(kelvins, 1) + "; charging is allowed up to " + warmest.print(),
                    "Let it cool before charging.",
                    inputs));
        } else if (kelvins < coldest.valueSi()) {
            findings.add(Inspection.against(
                    coldest,
                    "too-cold",
                    Standing.TEND,
                    "is at " + TradeUnit.CELSIUS.print(kelvins, 1) + "; charging is allowed from " + coldest.print(),
                    "Bring it to room temperature before charging.",
                    inputs));
        }
    }

    /** A temperature that was noted. */
    record Noted(Instant at, double kelvins) {
        static Stream<Noted> of(Instant at, @Nullable Double kelvins) {
            return kelvins == null ? Stream.empty() : Stream.of(new Noted(at, kelvins));
        }
    }
}
