package fettle.workshop.worksheet;

import fettle.engine.travel.CargoAnswer;
import fettle.engine.travel.Carriage;
import fettle.engine.travel.PackingLine;
import fettle.engine.travel.PackingList;
import fettle.engine.travel.ShippedAs;
import fettle.engine.travel.TravelPack;
import fettle.engine.travel.TravelTable;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import fettle.workshop.worksheet.Sheet.Figure;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** What may be done with packs on a journey by air. */
final class TravelSheet {
    private static final String BOTH = "both";
    private static final String UNITED_STATES = "United States";
    private static final String ICAO_IATA = "ICAO and IATA";
    private static final String BAGGAGE = "baggage";

    static final Worksheet WORKSHEET = new Worksheet(
            "travel",
            "Take packs by air",
            "Which packs may travel, how, how many, and what is to be done first?",
            List.of(
                    WorksheetField.lines(
                            "packs",
                            "Packs",
                            "One a line: tag; chemistry; cells; capacity; spare, in craft or power bank; and, where known,"
                                    + " Wh on its label; charge; grounded. E.g. P01; LiPo; 4S; 5000 mAh; spare; 74 Wh; 60 %"),
                    WorksheetField.choice(
                            "sent",
                            "Travels as",
                            "In the baggage of passengers, or sent as cargo or by post.",
                            BAGGAGE,
                            Stream.concat(
                                            Stream.of(BAGGAGE),
                                            Stream.of(ShippedAs.values()).map(TravelSheet::cargo))
                                    .toList()),
                    WorksheetField.line("travellers", "Travellers", "Who carry them, each for their own use.", "1"),
                    WorksheetField.choice(
                            "tables",
                            "Rules",
                            "The strictest of those chosen counts.",
                            BOTH,
                            List.of(BOTH, UNITED_STATES, ICAO_IATA)),
                    WorksheetField.line("day", "Day of travel", "E.g. 2026-07-18. May be left out.", "")),
            TravelSheet::answer);

    private TravelSheet() {}

    private static String cargo(ShippedAs how) {
        return "cargo " + how.label();
    }

    private static Sheet answer(Typed typed) {
        List<TravelPack> packs =
                typed.read("packs", () -> TravelLines.packs(typed.word("packs")), List.<TravelPack>of());
        int travellers = typed.read("travellers", () -> whole(typed.word("travellers")), 1);
        List<TravelTable> tables = typed.read("tables", () -> tables(typed.word("tables")), tables(BOTH));
        LocalDate day = typed.read("day", () -> day(typed.word("day"), tables), LocalDate.EPOCH);
        String sent = typed.word("sent");
        for (ShippedAs how : ShippedAs.values()) {
            if (sent.equals(cargo(how))) {
                return typed.make(() -> cargoSheet(packs, how));
            }
        }
        return typed.make(() -> {
            if (!sent.equals(BAGGAGE)) {
                throw new InputException("sent", "\"" + sent + "\" is no way to travel; expected baggage or cargo.");
            }
            return baggageSheet(PackingList.of(packs, travellers, tables, day));
        });
    }

    private static int whole(String typed) {
        if (!typed.matches("\\d{1,3}")) {
            throw new InputException(
                    "travellers", "travellers are \"" + typed + "\"; expected a whole number, e.g. 2.");
        }
        return Integer.parseInt(typed);
    }

    private static List<TravelTable> tables(String typed) {
        return switch (typed) {
            case BOTH -> List.of(TravelTable.UNITED_STATES, TravelTable.ICAO_IATA);
            case UNITED_STATES -> List.of(TravelTable.UNITED_STATES);
            case ICAO_IATA -> List.of(TravelTable.ICAO_IATA);
            default ->
                throw new InputException(
                        "tables",
                        "rules are \"" + typed + "\"; expected one of " + BOTH + ", " + UNITED_STATES + ", " + ICAO_IATA
                                + ".");
        };
    }

    /** Without a day, the date of the newest table: nothing here knows today. */
    private static LocalDate day(String typed, List<TravelTable> tables) {
        if (typed.isEmpty()) {
            return tables.stream()
                    .map(TravelTable::dated)
                    .max(LocalDate::compareTo)
                    .orElseThrow();
        }
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException unreadable) {
            throw new InputException("day", "day is \"" + typed + "\"; expected year-month-day, e.g. 2026-07-18.");
        }
    }

    private static Sheet baggageSheet(PackingList list) {
        List<Figure> figures = new ArrayList<>();
        List<String> notes = new ArrayList<>(list.counts());
        for (PackingLine line : list.lines()) {
            figures.add(Figure.exact(
                    line.tag() + "_rating",
                    line.tag() + ", " + line.carriedAs().label() + ": "
                            + line.carriage().label(),
                    line.ratingJoules(),
                    TradeUnit.WATT_HOUR,
                    2));
        }
        notes.addAll(alike(list.lines(), line -> String.join(" ", line.why())));
        notes.addAll(alike(
                list.lines(), line -> line.first().isEmpty() ? "" : "first: " + String.join(" ", line.first())));
        return new Sheet(verdict(list), figures, notes, list.confirm(), list.working());
    }

    /** What is said of packs, said once for those of which the same is said. */
    private static List<String> alike(List<PackingLine> lines, Function<PackingLine, String> said) {
        Map<String, String> tags = new LinkedHashMap<>();
        lines.forEach(line -> tags.merge(said.apply(line), line.tag(), (one, other) -> one + ", " + other));
        tags.remove("");
        return tags.entrySet().stream()
                .map(entry -> entry.getValue() + ": " + entry.getKey())
                .toList();
    }

    private static String verdict(PackingList list) {
        long home = count(list, Carriage.NOT_BY_AIR);
        long ask = count(list, Carriage.CABIN_WITH_APPROVAL);
        long free = list.lines().size() - home - ask;
        String counts = list.counts().isEmpty() ? "" : " Too many of a kind: see below.";
        return "By these tables " + free + " may travel, " + ask + " with the carrier's approval, " + home + " not."
                + counts;
    }

    private static long count(PackingList list, Carriage carriage) {
        return list.lines().stream().filter(line -> line.carriage() == carriage).count();
    }

    private static Sheet cargoSheet(List<TravelPack> packs, ShippedAs how) {
        if (packs.isEmpty()) {
            throw new InputException("packs", "there is no pack to travel. Name at least one.");
        }
        List<Figure> figures = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        String confirm = "";
        int never = 0;
        for (TravelPack pack : packs) {
            CargoAnswer answer = CargoAnswer.of(pack, how);
            String tag = pack.pack().tag();
            never += answer.maySend() ? 0 : 1;
            confirm = answer.confirm();
            steps.addAll(answer.working().steps());
            notes.add(tag + ": " + String.join(" ", answer.why()));
            if (answer.maySend()) {
                answer.drawCoulombs()
                        .ifPresent(draw -> figures.add(Figure.exact(
                                tag + "_draw", tag + ": draw first", draw, TradeUnit.MILLIAMPERE_HOUR, 0)));
                figures.add(Figure.exact(
                        tag + "_volts",
                        tag + ": a cell at rest at 30 %, about",
                        answer.restVolts(),
                        TradeUnit.VOLT,
                        2));
            }
        }
        String verdict = "As " + how.number() + ", at most 30 % charged"
                + (how == ShippedAs.ALONE ? ", on cargo aircraft only" : "") + "; " + never + " of " + packs.size()
                + " may not be sent at all.";
        return new Sheet(verdict, figures, notes, confirm, new Working(steps));
    }
}
