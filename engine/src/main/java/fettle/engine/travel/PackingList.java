package fettle.engine.travel;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.Faults;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Packs in passengers' baggage: each pack with what to do first and why, and what holds for all of them.
 *
 * @param lines one a pack, in the order given
 * @param counts limits of number that are passed or close, and how to keep them; empty if none is
 * @param confirm that the carrier decides, with the dates of the tables; always shown
 * @param tables the tables it was made by
 * @param working how each rating was reached
 */
public record PackingList(
        List<PackingLine> lines, List<String> counts, String confirm, List<TravelTable> tables, Working working) {
    private static final int MOST_TRAVELLERS = 20;
    private static final int LEAD_ACID_SPARES = 2;
    private static final Citation RATING = new Citation(
            "49 CFR 171.8, watt-hour: rated capacity × nominal voltage; PHMSA interpretation 22-0113: the maker's printed"
                    + " rating counts",
            CitationStatus.STANDARD);

    public PackingList {
        lines = List.copyOf(lines);
        counts = List.copyOf(counts);
        tables = List.copyOf(tables);
    }

    /**
     * Makes the list.
     *
     * @param packs what is to travel
     * @param travellers people who carry them, each for their own use, 1 … 20
     * @param tables whose rules hold; the strictest counts
     * @param day the day of travel: told apart from the tables' dates
     */
    public static PackingList of(List<TravelPack> packs, int travellers, List<TravelTable> tables, LocalDate day) {
        Faults faults = new Faults();
        if (travellers < 1 || travellers > MOST_TRAVELLERS) {
            faults.add("travellers", "travellers are " + travellers + "; expected 1 to " + MOST_TRAVELLERS + ".");
        }
        if (packs.isEmpty()) {
            faults.add("packs", "there is no pack to travel. Name at least one.");
        }
        if (tables.isEmpty()) {
            faults.add("tables", "no table of rules is chosen. Choose at least one.");
        }
        faults.refuse();
        List<PackingLine> lines =
                packs.stream().map(pack -> PackingLines.of(pack, tables)).toList();
        return new PackingList(
                lines,
                counts(packs, lines, travellers, tables),
                confirm(tables, day),
                tables,
                new Working(Stream.concat(
                                packs.stream().map(PackingList::step),
                                tables.stream().flatMap(PackingList::rules))
                        .toList()));
    }

    private static String confirm(List<TravelTable> tables, LocalDate day) {
        LocalDate oldest = tables.stream()
                .map(TravelTable::dated)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        String dates = tables.stream()
                .map(table -> table.name() + ", as of " + table.dated())
                .reduce((a, b) -> a + "; " + b)
                .orElseThrow();
        String old = day.isAfter(oldest.plusYears(1)) ? " A table is more than a year older than the journey." : "";
        return "Confirm with the carrier; rules change, and a carrier may be stricter. Tables: " + dates + "." + old;
    }

    private static List<String> counts(
            List<TravelPack> packs, List<PackingLine> lines, int travellers, List<TravelTable> tables) {
        List<String> counts = new ArrayList<>();
        counted(
                counts,
                lithium(packs, lines, RatingBand.FREE, CarriedAs.SPARE)
                        + lithium(packs, lines, RatingBand.FREE, CarriedAs.POWER_BANK),
                least(tables, TravelTable::smallSpares),
                travellers,
                "spares up to 100 Wh",
                "Unless the carrier allows more, leave some at home.");
        counted(
                counts,
                lithium(packs, lines, RatingBand.WITH_APPROVAL, CarriedAs.SPARE)
                        + lithium(packs, lines, RatingBand.WITH_APPROVAL, CarriedAs.POWER_BANK),
                least(tables, table -> OptionalInt.of(table.largeSpares())),
                travellers,
                "spares over 100 Wh",
                "Leave some at home or put them in their craft.");
        counted(
                counts,
                count(lines, line -> line.carriedAs() == CarriedAs.POWER_BANK),
                least(tables, TravelTable::powerBanks),
                travellers,
                "power banks",
                "Leave some at home.");
        counted(
                counts,
                count(lines, line -> line.carriedAs() == CarriedAs.INSTALLED),
                least(tables, TravelTable::devices),
                travellers,
                "craft and devices with a pack",
                "Unless the carrier allows more, leave some at home.");
        counted(
                counts,
                leadAcidSpares(packs, lines),
                OptionalInt.of(LEAD_ACID_SPARES),
                travellers,
                "lead-acid spares",
                "Leave some at home.");
        return counts;
    }

    private static void counted(
            List<String> counts, long carried, OptionalInt most, int travellers, String what, String mend) {
        if (most.isPresent() && carried > (long) most.getAsInt() * travellers) {
            counts.add(carried + " " + what + "; expected at most " + most.getAsInt() + " a person, for " + travellers
                    + (travellers == 1 ? " person. " : " people. ") + mend);
        }
    }

    private static OptionalInt least(List<TravelTable> tables, Function<TravelTable, OptionalInt> limit) {
        return tables.stream().map(limit).flatMapToInt(OptionalInt::stream).min();
    }

    private static long lithium(List<TravelPack> packs, List<PackingLine> lines, RatingBand band, CarriedAs as) {
        long found = 0;
        for (int i = 0; i < lines.size(); i++) {
            PackingLine line = lines.get(i);
            if (travels(line)
                    && packs.get(i).pack().chemistry().isLithium()
                    && line.band() == band
                    && line.carriedAs() == as) {
                found++;
            }
        }
        return found;
    }

    private static long leadAcidSpares(List<TravelPack> packs, List<PackingLine> lines) {
        long found = 0;
        for (int i = 0; i < lines.size(); i++) {
            boolean leadAcid = packs.get(i).pack().chemistry() == Chemistry.LEAD_ACID;
            if (leadAcid && travels(lines.get(i)) && lines.get(i).carriedAs() != CarriedAs.INSTALLED) {
                found++;
            }
        }
        return found;
    }

    private static long count(List<PackingLine> lines, Function<PackingLine, Boolean> which) {
        return lines.stream().filter(PackingList::travels).filter(which::apply).count();
    }

    private static boolean travels(PackingLine line) {
        return line.carriage() != Carriage.NOT_BY_AIR;
    }

    private static Stream<Step> rules(TravelTable table) {
        return table.rules().stream()
                .map(rule -> new Step(
                        table.name(), rule.statement(), List.of(), "read as of " + rule.dated(), rule.citation()));
    }

    private static Step step(TravelPack pack) {
        return new Step(
                "rating of " + pack.pack().tag(),
                "watt-hours = rated capacity · nominal volts, unless the label prints them",
                List.of(
                        "arrangement = " + pack.pack().arrangement() + " "
                                + pack.pack().chemistry().label(),
                        "nominal volts = " + pack.nominalVolts() + " V"),
                PackingLines.print(pack.wattHours()),
                RATING);
    }
}
