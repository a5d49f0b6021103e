package fettle.workshop;

import static fettle.workshop.TypedFields.written;

import fettle.engine.outing.Attended;
import fettle.engine.outing.Feed;
import fettle.engine.outing.Outing;
import fettle.engine.outing.OutingTimes;
import fettle.engine.outing.RunWish;
import fettle.engine.outing.Spot;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.outing.DayTimes;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * An outing as typed by a person.
 *
 * @param date the day at the field, year-month-day
 * @param zone time zone of every time below
 * @param leaveHome time
 * @param arrive time
 * @param packUp time
 * @param backHome time; empty for a way back as long as the way there
 * @param ambient temperature at the field
 * @param attended who is where when, one a line: {@code field 09:00 to 16:00}; empty for the time at the field
 * @param feeds one a line: {@code field: field-pair on field-box; 85 %; 09:00 to 12:00}
 * @param packs tags
 * @param runs one a line: {@code Harrier x3; value 5; 09:30 to 15:00; 8 min; gap 10 min; takes 70 %}
 * @param goals one a line, most important first; empty for the usual order
 * @param storageBy time; empty for the end of the last attended time
 */
public record OutingForm(
        String name,
        String date,
        String zone,
        String leaveHome,
        String arrive,
        String packUp,
        String backHome,
        String ambient,
        String attended,
        String feeds,
        String packs,
        String runs,
        String goals,
        String storageBy,
        String note) {
    private static final LocalDate ANY_DAY = LocalDate.EPOCH;
    private static final double ROOM_KELVINS = 293.15;

    /** The outing, or {@link InputException} with every fault, each at its field's name here. */
    public Outing toOuting() {
        TypedFields fields = new TypedFields();
        DayTimes day = new DayTimes(
                fields.read("date", this::day, ANY_DAY), fields.read("zone", this::zoneId, ZoneOffset.UTC));
        Instant left = time(
                fields, day, "leaveHome", "leaving home", leaveHome, day.date().atTime(8, 0));
        Instant arrived =
                time(fields, day, "arrive", "arriving", arrive, day.date().atTime(9, 0));
        Instant packed =
                time(fields, day, "packUp", "packing up", packUp, day.date().atTime(16, 0));
        Instant usualBack = packed.plusSeconds(Math.max(60, arrived.getEpochSecond() - left.getEpochSecond()));
        Instant back = backHome.isBlank()
                ? usualBack
                : fields.read("backHome", () -> day.read("backHome", "coming home", backHome), usualBack);
        double kelvins = fields.needed(
                "ambient", "temperature at the field", ambient, Measure.TEMPERATURE, TradeUnit.CELSIUS, ROOM_KELVINS);
        OutingLines lines = new OutingLines(day);
        List<Attended> present = attended.isBlank()
                ? List.of(new Attended(Spot.FIELD, arrived, packed))
                : fields.read(
                        "attended", () -> lines.attended(attended), List.of(new Attended(Spot.FIELD, arrived, packed)));
        Instant last =
                present.stream().map(Attended::until).max(Instant::compareTo).orElse(back);
        Instant usualStorage = last.isAfter(back) ? last : back;
        Instant stored = storageBy.isBlank()
                ? usualStorage
                : fields.read("storageBy", () -> day.read("storageBy", "storage by", storageBy), usualStorage);
        List<Feed> fed = fields.read("feeds", () -> lines.feeds(feeds), List.of());
        List<RunWish> wishes = fields.read("runs", () -> lines.wishes(runs), List.of());
        List<String> order = fields.read("goals", () -> GoalText.keys(goals), List.of());
        return fields.make(
                () -> new Outing(
                        name.strip(),
                        day.zone().getId(),
                        new OutingTimes(left, arrived, packed, back),
                        kelvins,
                        present,
                        fed,
                        tags(packs),
                        wishes,
                        order,
                        stored,
                        List.of(),
                        List.of(),
                        note.strip()),
                Map.of());
    }

    /** An outing as a person would type it. */
    public static OutingForm of(Outing outing) {
        DayTimes day = new DayTimes(outing.date(), outing.zoneId());
        OutingLines lines = new OutingLines(day);
        return new OutingForm(
                outing.name(),
                outing.date().toString(),
                outing.zone(),
                day.write(outing.times().leaveHome()),
                day.write(outing.times().arrive()),
                day.write(outing.times().packUp()),
                day.write(outing.times().backHome()),
                written(outing.ambientKelvins(), Measure.TEMPERATURE),
                outing.attended().stream().map(lines::write).collect(Collectors.joining("\n")),
                outing.feeds().stream().map(lines::write).collect(Collectors.joining("\n")),
                String.join(", ", outing.packs()),
                outing.wishes().stream().map(lines::write).collect(Collectors.joining("\n")),
                outing.goals().stream().map(GoalText::label).collect(Collectors.joining("\n")),
                day.write(outing.storageBy()),
                outing.note());
    }

    private static Instant time(
            TypedFields fields, DayTimes day, String field, String what, String typed, LocalDateTime instead) {
        if (typed.isBlank()) {
            fields.fault(field, what + " is not stated. Write a time, e.g. 09:30.");
            return instead.atZone(day.zone()).toInstant();
        }
        return fields.read(
                field,
                () -> day.read(field, what, typed),
                instead.atZone(day.zone()).toInstant());
    }

    private LocalDate day() {
        try {
            return LocalDate.parse(date.strip());
        } catch (DateTimeException wrong) {
            throw new InputException(
                    "date", "the day is \"" + date.strip() + "\"; expected year-month-day, e.g. 2026-05-16.");
        }
    }

    private ZoneId zoneId() {
        try {
            return ZoneId.of(zone.strip());
        } catch (DateTimeException wrong) {
            throw new InputException(
                    "zone", "time zone is \"" + zone.strip() + "\"; expected a name like Europe/Zurich or +02:00.");
        }
    }

    private static List<String> tags(String typed) {
        return Arrays.stream(typed.split("[,;\\s]+"))
                .filter(tag -> !tag.isBlank())
                .toList();
    }

    /** A share as typed, e.g. {@code 85 %}. */
    static double share(String field, String what, String typed) {
        return QuantityText.si(field, what, typed, Measure.FRACTION, TradeUnit.PERCENT);
    }
}
